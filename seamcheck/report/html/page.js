"use strict";(()=>{var W0="http://www.w3.org/2000/svg";function mf(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1)){if(n==="style"||n.startsWith("on"))throw new Error(`attribute ${n} is not set from here`);i.setAttribute(n,s===!0?"":String(s))}return Po(i,e),i}function Po(i,t){for(let e of t)e!=null&&(Array.isArray(e)?Po(i,e):i.append(e instanceof Node?e:String(e)))}function qt(i,t=null,...e){return mf(document.createElement(i),t,e)}function ut(i,t=null,...e){return mf(document.createElementNS(W0,i),t,e)}function fe(i){return document.getElementById(i)}function en(i){for(;i.lastChild;)i.lastChild.remove()}var q=i=>String(Math.round(i*100)/100);function rn(i){return getComputedStyle(document.documentElement).getPropertyValue(`--${i}`).trim()}function Io(i,t){let e=!1,n=()=>{e||(e=!0,s.disconnect(),t())},s=new IntersectionObserver(r=>{r.some(o=>o.isIntersecting)&&n()},{rootMargin:"400px"});return s.observe(i),n}var gf=()=>matchMedia("(prefers-reduced-motion: reduce)").matches;var Lo={decimal:".",inch:!1,texts:{}},X0={mm:[25.4,"in",2],"mm²":[25.4**2,"in²",3],"mm³":[25.4**3,"in³",4],"mm/s":[25.4,"in/s",1]};function _f(i){i&&(Lo=i)}function gt(i,t={}){return(Lo.texts[i]??i).replace(/\{(\w+)\}/g,(e,n)=>n in t?String(t[n]):e)}function ss(i,t,e){let n=Lo.inch?X0[t]:void 0;return n?[i/n[0],n[1],Math.min(e+n[2],Math.max(4,n[2]))]:[i,t,e]}function _i(i,t){let e=i.toFixed(t);return(Number(e)===0?e.replace("-",""):e).replace(".",Lo.decimal)}function Rs(i,t){let[e,,n]=ss(i,"mm",t);return _i(e,n)}var Qs=()=>ss(0,"mm",0)[1],Un=(i,t)=>`${Rs(i,t)} ${Qs()}`,Ei=()=>Lo.inch?25.4:1;function xf(i,t){let[e,n,s]=ss(i,"mm²",t);return`${_i(e,s)} ${n}`}function Dh(i){let t={};for(let e of i.querySelectorAll("[data-key]"))t[e.dataset.key]=e.value.trim();return t}var $0=i=>Object.values(i).some(t=>t!=="");function q0(i){let t=[...document.querySelectorAll("[data-answer]")].flatMap(s=>{let r=i.findings.find(a=>String(a.n)===s.dataset.answer),o=Dh(s);return $0(o)?[{id:r.id,rule:r.rule,place:r.place??{},...o}]:[]}),e=[...document.querySelectorAll("[data-question]")].map(s=>({key:s.dataset.question,...Dh(s)})),n=[...document.querySelectorAll("[data-role]")].map(s=>({role:s.dataset.role,...Dh(s)}));return{document:"seamcheck-answers",schema_version:1,model:i.model,findings:t,questions:e.filter(s=>s.answer),approval:n.filter(s=>s.name||s.decision)}}function yf(i){fe("save-answers")?.addEventListener("click",()=>{let t=JSON.stringify(q0(i),null,1),e=document.createElement("a");e.href=URL.createObjectURL(new Blob([t],{type:"application/json"})),e.download=`${i.model.file.replace(/\.[^.]*$/,"").replace(/[^A-Za-z0-9._-]+/g,"-")||"review"}-answers.json`,e.click(),URL.revokeObjectURL(e.href),fe("saved").textContent=gt("Saved as {file}.",{file:e.download})})}var Y0=new Uint8Array(new Uint32Array([1]).buffer)[0]===1;function Va(i){let t=atob(i),e=new Uint8Array(t.length);for(let n=0;n<t.length;n++)e[n]=t.charCodeAt(n);return e.buffer}function vf(i){let t=Va(i);if(!Y0){let e=new DataView(t);for(let n=0;n+4<=t.byteLength;n+=4)e.setUint32(n,e.getUint32(n,!0),!1)}return t}function za(i){let t=new Uint8Array(Va(i)),e=t.length/3,n=new Int32Array(e);for(let s=0;s<e;s++)n[s]=(t[3*s]|t[3*s+1]<<8|t[3*s+2]<<16)<<8>>8;return n}function Nh(i,t){for(let e=t;e<i.length;e++)i[e]=i[e-t]+i[e]<<8>>8;return i}var bf=(i,t)=>Float32Array.from(i,e=>e*t),Z0=8.9,Ir=class{offsets;segments;owner;slopes;shade;others;row=new Map;step;constructor(t){this.offsets=new Uint32Array(vf(t.offsets)),this.segments=bf(za(t.segments),t.step),this.owner=new Uint8Array(Va(t.owner)),this.slopes=t.slope?[...new Float32Array(vf(t.slope))]:t.stations.map(()=>0),this.shade=(t.shade??[]).map(([e,n,s,r,o,a,l,c,u])=>({station:e,low:n,high:s,share:r,u:o,v:a,along:l,part:c,leans:u})),this.others=t.others??[],t.stations.forEach((e,n)=>this.row.set(e,n)),this.step=t.stations.slice(1).reduce((e,n,s)=>Math.max(e,Math.min(20,n-t.stations[s])),1)}at(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.outline(n)}return null}slope(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.slopes[n]}return 0}edgeOfCover(t){let e=0;return this.owner.forEach((n,s)=>{n===1&&(e=Math.max(e,t*this.segments[4*s],t*this.segments[4*s+2]))}),e<Z0?e:0}shadeAt(t){return this.shade.filter(e=>e.station===t)}ownerOf(t){let e=this.others.indexOf(t);return e<0?void 0:e+2}partOf(t){return this.others[t-2]??null}isNeighbour(t){return!this.row.has(t)}outline(t){let[e,n]=[this.offsets[t],this.offsets[t+1]];return{segments:this.segments.subarray(4*e,4*n),owner:this.owner.subarray(e,n)}}};function Mf(i){return{part:i.part,positions:bf(Nh(za(i.positions),3),i.step),triangles:new Uint32Array(Nh(za(i.triangles),1)),face:Nh(za(i.face),1),leftOut:i.left_out??0}}var Sf=i=>J0(i);async function J0(i){let t=new Blob([Va(i.textContent.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));return JSON.parse(await new Response(t).text())}var Ga=class{constructor(t){this.payload=t}payload;unit(t){let e=this.payload.quantities[t]?.unit??"";return e==="1"?"":ss(0,e,0)[1]}title(t){return this.payload.quantities[t]?.title??t}bare(t,e){let n=this.payload.quantities[e],[s,,r]=ss(t,n?.unit??"",n?.decimals??3);return _i(s,r)}value(t,e){if(t==null||!Number.isFinite(t))return gt("not measured");if(e.startsWith("trap_open"))return t?gt("open"):gt("closed");let n=this.unit(e);return n?`${this.bare(t,e)} ${n}`:this.bare(t,e)}reason(t,e,n,s){let r=this.payload.joints.find(o=>o.id===t)?.contours.find(o=>o.id===e);for(let o of r?.unmeasured??[]){if(o.column!==n)continue;let{from_s:a,to_s:l}=o;if(a<=l?s>=a-1e-6&&s<=l+1e-6:s>=a-1e-6||s<=l+1e-6)return this.payload.reasons[o.why]??o.why}return""}part(t){return this.payload.parts.find(e=>e.id===t)?.name||t}},Lr={"must-fix":"◆",attention:"▲",note:"○"},Ha=i=>i.length>1?`${i[0].n}+${i.length-1}`:String(i[0].n);function Cs(i){let t=i.map(e=>e.n);return t.slice(0,3).join("·")+(t.length>3?` +${t.length-3}`:"")}var Wa=class{constructor(t){this.payload=t;this.words=new Ga(t)}payload;words;sections=new Map;unpacked=null;sectionsOf(t,e){let n=`${t}/${e}`;if(!this.sections.has(n)){let s=this.payload.view?.sections.find(r=>r.joint===t&&r.contour===e);this.sections.set(n,s?new Ir(s):null)}return this.sections.get(n)}get meshes(){return this.unpacked??=(this.payload.view?.meshes??[]).map(Mf),this.unpacked}};var j0="uplot",K0="u-hz",Q0="u-vt",t_="u-title",e_="u-wrap",n_="u-under",i_="u-over",s_="u-axis",nr="u-off",r_="u-select",o_="u-cursor-x",a_="u-cursor-y",l_="u-cursor-pt",c_="u-legend",h_="u-live",u_="u-inline",d_="u-series",f_="u-marker",wf="u-label",p_="u-value",No="width",Uo="height";var Ef="bottom",Dr="left",Uh="right",Kh="#000",Tf=Kh+"0",Fh="mousemove",Af="mousedown",Oh="mouseup",Rf="mouseenter",Cf="mouseleave",Pf="dblclick",m_="resize",g_="scroll",If="change",Za="dppxchange",Qh="--",zr=typeof window<"u",Gh=zr?document:null,Ur=zr?window:null,__=zr?navigator:null,Te,Xa;function Hh(){let i=devicePixelRatio;Te!=i&&(Te=i,Xa&&Xh(If,Xa,Hh),Xa=matchMedia(`(min-resolution: ${Te-.001}dppx) and (max-resolution: ${Te+.001}dppx)`),ir(If,Xa,Hh),Ur.dispatchEvent(new CustomEvent(Za)))}function oi(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Wh(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function We(i,t,e){i.style[t]=e+"px"}function Ti(i,t,e,n){let s=Gh.createElement(i);return t!=null&&oi(s,t),e?.insertBefore(s,n),s}function xi(i,t){return Ti("div",i,t)}var Lf=new WeakMap;function $i(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=Lf.get(i);r!=o&&(i.style.transform=r,Lf.set(i,r),t<0||e<0||t>n||e>s?oi(i,nr):Wh(i,nr))}var Df=new WeakMap;function Nf(i,t,e){let n=t+e,s=Df.get(i);n!=s&&(Df.set(i,n),i.style.background=t,i.style.borderColor=e)}var Uf=new WeakMap;function Ff(i,t,e,n){let s=t+""+e,r=Uf.get(i);s!=r&&(Uf.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var tu={passive:!0},x_={...tu,capture:!0};function ir(i,t,e,n){t.addEventListener(i,e,n?x_:tu)}function Xh(i,t,e,n){t.removeEventListener(i,e,tu)}zr&&Hh();function Ai(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:ai((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function hp(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var up=i=>i!=null,dp=i=>i!=null&&i>0,Ka=hp(up),y_=hp(dp);function v_(i,t,e,n=0,s=!1){let r=s?y_:Ka,o=s?dp:up;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let u=i[c];o(u)&&(u<a?a=u:u>l&&(l=u))}return[a??Be,l??-Be]}function Qa(i,t,e,n){let s=kf(i),r=kf(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?rs:fp,a=s==1?ai:yi,l=r==1?yi:ai,c=a(o(xn(i))),u=l(o(xn(t))),h=Fr(e,c),d=Fr(e,u);return e==10&&(c<0&&(h=ke(h,-c)),u<0&&(d=ke(d,-u))),n||e==2?(i=h*s,t=d*r):(i=_p(i,h),t=tl(t,d)),[i,t]}function eu(i,t,e,n){let s=Qa(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var nu=.1,Of={mode:3,pad:nu},Oo={pad:0,soft:null,mode:0},b_={min:Oo,max:Oo};function Ja(i,t,e,n){return el(e)?Bf(i,t,e):(Oo.pad=e,Oo.soft=n?0:null,Oo.mode=n?3:0,Bf(i,t,b_))}function we(i,t){return i??t}function M_(i,t,e){for(t=we(t,0),e=we(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function Bf(i,t,e){let n=e.min,s=e.max,r=we(n.pad,0),o=we(s.pad,0),a=we(n.hard,-Be),l=we(s.hard,Be),c=we(n.soft,Be),u=we(s.soft,-Be),h=we(n.mode,0),d=we(s.mode,0),f=t-i,g=rs(f),_=qn(xn(i),xn(t)),p=rs(_),m=xn(p-g);(f<1e-24||m>10)&&(f=0,(i==0||t==0)&&(f=1e-24,h==2&&c!=Be&&(r=0),d==2&&u!=-Be&&(o=0)));let y=f||_||1e3,E=rs(y),b=Fr(10,ai(E)),C=y*(f==0?i==0?.1:1:r),w=ke(_p(i-C,b/10),24),x=i>=c&&(h==1||h==3&&w<=c||h==2&&w>=c)?c:Be,S=qn(a,w<x&&i>=x?x:Ri(x,w)),z=y*(f==0?t==0?.1:1:o),I=ke(tl(t+z,b/10),24),R=t<=u&&(d==1||d==3&&I>=u||d==2&&I<=u)?u:-Be,U=Ri(l,I>R&&t<=R?R:qn(R,I));return S==U&&S==0&&(U=100),[S,U]}var S_=new Intl.NumberFormat(zr?__.language:"en-US"),iu=i=>S_.format(i),li=Math,Ya=li.PI,xn=li.abs,ai=li.floor,_n=li.round,yi=li.ceil,Ri=li.min,qn=li.max,Fr=li.pow,kf=li.sign,rs=li.log10,fp=li.log2,w_=(i,t=1)=>li.sinh(i)*t,Bh=(i,t=1)=>li.asinh(i/t),Be=1/0;function zf(i){return(rs((i^i>>31)-(i>>31))|0)+1}function $h(i,t,e){return Ri(qn(i,t),e)}function pp(i){return typeof i=="function"}function ve(i){return pp(i)?i:()=>i}var E_=()=>{},mp=i=>i,gp=(i,t)=>t,T_=i=>null,Vf=i=>!0,Gf=(i,t)=>i==t,A_=/\.\d*?(?=9{6,}|0{6,})/gm,sr=i=>{if(yp(i)||Is.has(i))return i;let t=`${i}`,e=t.match(A_);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${sr(s)}e${r}`}return ke(i,n)};function tr(i,t){return sr(ke(sr(i/t))*t)}function tl(i,t){return sr(yi(sr(i/t))*t)}function _p(i,t){return sr(ai(sr(i/t))*t)}function ke(i,t=0){if(yp(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return _n(n)/e}var Is=new Map;function xp(i){return((""+i).split(".")[1]||"").length}function ko(i,t,e,n){let s=[],r=n.map(xp);for(let o=t;o<e;o++){let a=xn(o),l=ke(Fr(i,o),a);for(let c=0;c<n.length;c++){let u=i==10?+`${n[c]}e${o}`:n[c]*l,h=(o>=0?0:a)+(o>=r[c]?0:r[c]),d=i==10?u:ke(u,h);s.push(d),Is.set(d,h)}}return s}var Bo={},su=[],Or=[null,null],Ps=Array.isArray,yp=Number.isInteger,R_=i=>i===void 0;function Hf(i){return typeof i=="string"}function el(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function C_(i){return i!=null&&typeof i=="object"}var P_=Object.getPrototypeOf(Uint8Array),vp="__proto__";function Br(i,t=el){let e;if(Ps(i)){let n=i.find(s=>s!=null);if(Ps(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Br(i[s],t)}else e=i.slice()}else if(i instanceof P_)e=i.slice();else if(t(i)){e={};for(let n in i)n!=vp&&(e[n]=Br(i[n],t))}else e=i;return e}function dn(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=vp&&(el(i[s])?dn(i[s],Br(n[s])):i[s]=Br(n[s]))}return i}var I_=0,L_=1,D_=2;function N_(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function U_(i,t){if(B_(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return k_(o[0])||(o=O_(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let u=0;u<c;u++)e.add(l[u])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let u=a[c],h=Array(s).fill(void 0),d=t?t[o][c]:L_,f=[];for(let g=0;g<u.length;g++){let _=u[g],p=r.get(l[g]);_===null?d!=I_&&(h[p]=_,d==D_&&f.push(p)):h[p]=_}N_(h,f,s),n.push(h)}}return n}var F_=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function O_(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function B_(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function k_(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=qn(1,ai((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var bp=["January","February","March","April","May","June","July","August","September","October","November","December"],Mp=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Sp(i){return i.slice(0,3)}var z_=Mp.map(Sp),V_=bp.map(Sp),G_={MMMM:bp,MMM:V_,WWWW:Mp,WWW:z_};function Do(i){return(i<10?"0":"")+i}function H_(i){return(i<10?"00":i<100?"0":"")+i}var W_={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Do(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Do(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Do(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Do(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Do(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>H_(i.getMilliseconds())};function ru(i,t){t=t||G_;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?W_[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var X_=new Intl.DateTimeFormat().resolvedOptions().timeZone;function $_(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==X_?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var wp=i=>i%1==0,ja=[1,2,2.5,5],q_=ko(10,-32,0,ja),Ep=ko(10,0,32,ja),Y_=Ep.filter(wp),er=q_.concat(Ep),ou=`
`,Tp="{YYYY}",Wf=ou+Tp,Ap="{M}/{D}",Fo=ou+Ap,$a=Fo+"/{YY}",Rp="{aa}",Z_="{h}:{mm}",Nr=Z_+Rp,Xf=ou+Nr,$f=":{ss}",Pe=null;function Cp(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?ko(10,0,3,ja).filter(wp):ko(10,-3,0,ja)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,Tp,Pe,Pe,Pe,Pe,Pe,Pe,1],[s*28,"{MMM}",Wf,Pe,Pe,Pe,Pe,Pe,1],[s,Ap,Wf,Pe,Pe,Pe,Pe,Pe,1],[n,"{h}"+Rp,$a,Pe,Fo,Pe,Pe,Pe,1],[e,Nr,$a,Pe,Fo,Pe,Pe,Pe,1],[t,$f,$a+" "+Nr,Pe,Fo+" "+Nr,Pe,Xf,Pe,1],[i,$f+".{fff}",$a+" "+Nr,Pe,Fo+" "+Nr,Pe,Xf,Pe,1]];function u(h){return(d,f,g,_,p,m)=>{let y=[],E=p>=o,b=p>=r&&p<o,C=h(g),w=ke(C*i,3),x=kh(C.getFullYear(),E?0:C.getMonth(),b||E?1:C.getDate()),S=ke(x*i,3);if(b||E){let z=b?p/r:0,I=E?p/o:0,R=w==S?w:ke(kh(x.getFullYear()+I,x.getMonth()+z,1)*i,3),U=new Date(_n(R/i)),V=U.getFullYear(),P=U.getMonth();for(let F=0;R<=_;F++){let H=kh(V+I*F,P+z*F,1),O=H-h(ke(H*i,3));R=ke((+H+O)*i,3),R<=_&&y.push(R)}}else{let z=p>=s?s:p,I=ai(g)-ai(w),R=S+I+tl(w-S,z);y.push(R);let U=h(R),V=U.getHours()+U.getMinutes()/e+U.getSeconds()/n,P=p/n,F=d.axes[f]._space,H=m/F;for(;R=ke(R+p,i==1?0:3),!(R>_);)if(P>1){let O=ai(ke(V+P,6))%24,j=h(R).getHours()-O;j>1&&(j=-1),R-=j*n,V=(V+P)%24;let tt=y[y.length-1];ke((R-tt)/p,3)*H>=.7&&y.push(R)}else y.push(R)}return y}}return[l,c,u]}var[J_,j_,K_]=Cp(1),[Q_,tx,ex]=Cp(.001);ko(2,-53,53,[1]);function qf(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function Yf(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],l,c,u,h,d,f;return n.map(g=>{let _=i(g),p=_.getFullYear(),m=_.getMonth(),y=_.getDate(),E=_.getHours(),b=_.getMinutes(),C=_.getSeconds(),w=p!=l&&a[2]||m!=c&&a[3]||y!=u&&a[4]||E!=h&&a[5]||b!=d&&a[6]||C!=f&&a[7]||a[1];return l=p,c=m,u=y,h=E,d=b,f=C,w(_)})}}function nx(i,t){let e=ru(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function kh(i,t,e){return new Date(i,t,e)}function Zf(i,t){return t(i)}var ix="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Jf(i,t){return(e,n,s,r)=>r==null?Qh:t(i(n))}function sx(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function rx(i,t){return i.series[t].fill(i,t)}var ox={show:!0,live:!0,isolate:!1,mount:E_,markers:{show:!0,width:2,stroke:sx,fill:rx,dash:"solid"},idx:null,idxs:null,values:[]};function ax(i,t){let e=i.cursor.points,n=xi(),s=e.size(i,t);We(n,No,s),We(n,Uo,s);let r=s/-2;We(n,"marginLeft",r),We(n,"marginTop",r);let o=e.width(i,t,s);return o&&We(n,"borderWidth",o),n}function lx(i,t){let e=i.series[t].points;return e._fill||e._stroke}function cx(i,t){let e=i.series[t].points;return e._stroke||e._fill}function hx(i,t){return i.series[t].points.size}var zh=[0,0];function ux(i,t,e){return zh[0]=t,zh[1]=e,zh}function qa(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Vh(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var dx={show:!0,x:!0,y:!0,lock:!1,move:ux,points:{one:!1,show:ax,size:hx,width:0,stroke:cx,fill:lx},bind:{mousedown:qa,mouseup:qa,click:qa,dblclick:qa,mousemove:Vh,mouseleave:Vh,mouseenter:Vh},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Pp={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},au=dn({},Pp,{filter:gp}),Ip=dn({},au,{size:10}),Lp=dn({},Pp,{show:!1}),lu='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',Dp="bold "+lu,Np=1.5,jf={show:!0,scale:"x",stroke:Kh,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Dp,side:2,grid:au,ticks:Ip,border:Lp,font:lu,lineGap:Np,rotate:0},fx="Value",px="Time",Kf={show:!0,scale:"x",auto:!1,sorted:1,min:Be,max:-Be,idxs:[]};function mx(i,t,e,n,s){return t.map(r=>r==null?"":iu(r))}function gx(i,t,e,n,s,r,o){let a=[],l=Is.get(s)||0;e=o?e:ke(tl(e,s),l);for(let c=e;c<=n;c=ke(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function qh(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?rs:fp,u=ai(c(e));s=Fr(l,u),l==10&&(s=er[Ai(s,er)]);let h=e,d=s*l;l==10&&(d=er[Ai(d,er)]);do a.push(h),h=h+s,l==10&&!Is.has(h)&&(h=ke(h,Is.get(s))),h>=d&&(s=h,d=s*l,l==10&&(d=er[Ai(d,er)]));while(h<=n);return a}function _x(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?qh(i,t,qn(l,e),n,s):[l],u=n>=0&&e<=0?[0]:[];return(e<-l?qh(i,t,qn(l,-n),-e,s):[l]).reverse().map(d=>-d).concat(u,c)}var Up=/./,xx=/[12357]/,yx=/[125]/,Qf=/1/,Yh=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function vx(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,u=l(10,o),h=l(9,o)-u>=c?Up:l(7,o)-u>=c?xx:l(5,o)-u>=c?yx:Qf;if(h==Qf){let d=xn(l(1,o)-u);if(d<c)return Yh(t.slice().reverse(),a.distr,h,yi(c/d)).reverse()}return Yh(t,a.distr,h,1)}function bx(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=xn(l(1,o)-l(2,o));return c<a?Yh(t.slice().reverse(),3,Up,yi(a/c)).reverse():t}function Mx(i,t,e,n){return n==null?Qh:t==null?"":iu(t)}var tp={show:!0,scale:"y",stroke:Kh,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Dp,side:3,grid:au,ticks:Ip,border:Lp,font:lu,lineGap:Np,rotate:0};function Sx(i,t){let e=3+(i||1)*2;return ke(e*t,3)}function wx(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=xn(o-r),l=i.series[t],c=a/(l.points.space*Te);return n[1]-n[0]<=c}var ep={scale:null,auto:!0,sorted:0,min:Be,max:-Be},Fp=(i,t,e,n,s)=>s,np={show:!0,auto:!0,sorted:0,gaps:Fp,alpha:1,facets:[dn({},ep,{scale:"x"}),dn({},ep,{scale:"y"})]},ip={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:Fp,alpha:1,points:{show:wx,filter:null},values:null,min:Be,max:-Be,idxs:[],path:null,clip:null};function Ex(i,t,e,n,s){return e/10}var Op={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},Tx=dn({},Op,{time:!1,ori:1}),sp={};function Bp(i,t){let e=sp[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let u=0;u<e.plots.length;u++)e.plots[u]!=s&&e.plots[u].pub(n,s,r,o,a,l,c)}},i!=null&&(sp[i]=e)),e}var kr=1,Zh=2;function rr(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],u=n==2?o[s.facets[0].scale]:o[i.series[0].scale],h=n==2?o[s.facets[1].scale]:o[s.scale],d=a.left,f=a.top,g=a.width,_=a.height,p=i.valToPosH,m=i.valToPosV;return u.ori==0?e(s,l,c,u,h,p,m,d,f,g,_,il,Vr,rl,zp,Gp):e(s,l,c,u,h,m,p,f,d,_,g,sl,Gr,uu,Vp,Hp)}function cu(i,t){let e=0,n=0,s=we(i.bands,su);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function Ax(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function os(i,t,e,n,s,r){return rr(i,t,(o,a,l,c,u,h,d,f,g,_,p)=>{let m=o.pxRound,y=c.dir*(c.ori==0?1:-1),E=c.ori==0?Vr:Gr,b,C;y==1?(b=e,C=n):(b=n,C=e);let w=m(h(a[b],c,_,f)),x=m(d(l[b],u,p,g)),S=m(h(a[C],c,_,f)),z=m(d(r==1?u.max:u.min,u,p,g)),I=new Path2D(s);return E(I,S,z),E(I,w,z),E(I,w,x),I})}function nl(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?rl:uu,l=e;for(let h=0;h<i.length;h++){let d=i[h];if(d[1]>d[0]){let f=d[0]-l;f>0&&a(o,l,n,f,n+r),l=d[1]}}let c=e+s-l,u=10;c>0&&a(o,l,n-u/2,c,n+r+u)}return o}function Rx(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function hu(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let h=c,d=c;if(s==1)for(;++c<=n&&t[c]===null;)d=c;else for(;--c>=e&&t[c]===null;)d=c;let f=r(i[h]),g=d==h?f:r(i[d]),_=h-s;f=o<=0&&_>=0&&_<l?r(i[_]):f;let m=d+s;g=o>=0&&m>=0&&m<l?r(i[m]):g,g>=f&&a.push([f,g])}return a}function rp(i){return i==0?mp:i==1?_n:t=>tr(t,i)}function kp(i){let t=i==0?il:sl,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,u=0)=>{c==0&&u==0?n(s,r,o,a,l):(c=Ri(c,a/2,l/2),u=Ri(u,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,u),e(s,r,o+l,r,o,u),e(s,r,o,r+a,o,c),s.closePath())}}var il=(i,t,e)=>{i.moveTo(t,e)},sl=(i,t,e)=>{i.moveTo(e,t)},Vr=(i,t,e)=>{i.lineTo(t,e)},Gr=(i,t,e)=>{i.lineTo(e,t)},rl=kp(0),uu=kp(1),zp=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},Vp=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},Gp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},Hp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function Wp(i){return(t,e,n,s,r)=>rr(t,e,(o,a,l,c,u,h,d,f,g,_,p)=>{let{pxRound:m,points:y}=o,E,b;c.ori==0?(E=il,b=zp):(E=sl,b=Vp);let C=ke(y.width*Te,3),w=(y.size-y.width)/2*Te,x=ke(w*2,3),S=new Path2D,z=new Path2D,{left:I,top:R,width:U,height:V}=t.bbox;rl(z,I-x,R-x,U+x*2,V+x*2);let P=F=>{if(l[F]!=null){let H=m(h(a[F],c,_,f)),O=m(d(l[F],u,p,g));E(S,H+w,O),b(S,H,O,w,0,Ya*2)}};if(r)r.forEach(P);else for(let F=n;F<=s;F++)P(F);return{stroke:C>0?S:null,fill:S,clip:z,flags:kr|Zh}})}function Xp(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var Cx=Xp(Vr),Px=Xp(Gr);function $p(i){let t=we(i?.alignGaps,0);return(e,n,s,r)=>rr(e,n,(o,a,l,c,u,h,d,f,g,_,p)=>{[s,r]=Ka(l,s,r);let m=o.pxRound,y=V=>m(h(V,c,_,f)),E=V=>m(d(V,u,p,g)),b,C;c.ori==0?(b=Vr,C=Cx):(b=Gr,C=Px);let w=c.dir*(c.ori==0?1:-1),x={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:kr},S=x.stroke,z=!1;if(r-s>=_*4){let V=at=>e.posToVal(at,c.key,!0),P=null,F=null,H,O,st,Z=y(a[w==1?s:r]),j=y(a[s]),tt=y(a[r]),ct=V(w==1?j+1:tt-1);for(let at=w==1?s:r;at>=s&&at<=r;at+=w){let $=a[at],pt=(w==1?$<ct:$>ct)?Z:y($),vt=l[at];pt==Z?vt!=null?(O=vt,P==null?(b(S,pt,E(O)),H=P=F=O):O<P?P=O:O>F&&(F=O)):vt===null&&(z=!0):(P!=null&&C(S,Z,E(P),E(F),E(H),E(O)),vt!=null?(O=vt,b(S,pt,E(O)),P=F=H=O):(P=F=null,vt===null&&(z=!0)),Z=pt,ct=V(Z+w))}P!=null&&P!=F&&st!=Z&&C(S,Z,E(P),E(F),E(H),E(O))}else for(let V=w==1?s:r;V>=s&&V<=r;V+=w){let P=l[V];P===null?z=!0:P!=null&&b(S,y(a[V]),E(P))}let[R,U]=cu(e,n);if(o.fill!=null||R!=0){let V=x.fill=new Path2D(S),P=o.fillTo(e,n,o.min,o.max,R),F=E(P),H=y(a[s]),O=y(a[r]);w==-1&&([O,H]=[H,O]),b(V,O,F),b(V,H,F)}if(!o.spanGaps){let V=[];z&&V.push(...hu(a,l,s,r,w,y,t)),x.gaps=V=o.gaps(e,n,s,r,V),x.clip=nl(V,c.ori,f,g,_,p)}return U!=0&&(x.band=U==2?[os(e,n,s,r,S,-1),os(e,n,s,r,S,1)]:os(e,n,s,r,S,U)),x})}function Ix(i){let t=we(i.align,1),e=we(i.ascDesc,!1),n=we(i.alignGaps,0),s=we(i.extend,!1);return(r,o,a,l)=>rr(r,o,(c,u,h,d,f,g,_,p,m,y,E)=>{[a,l]=Ka(h,a,l);let b=c.pxRound,{left:C,width:w}=r.bbox,x=j=>b(g(j,d,y,p)),S=j=>b(_(j,f,E,m)),z=d.ori==0?Vr:Gr,I={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:kr},R=I.stroke,U=d.dir*(d.ori==0?1:-1),V=S(h[U==1?a:l]),P=x(u[U==1?a:l]),F=P,H=P;s&&t==-1&&(H=C,z(R,H,V)),z(R,P,V);for(let j=U==1?a:l;j>=a&&j<=l;j+=U){let tt=h[j];if(tt==null)continue;let ct=x(u[j]),at=S(tt);t==1?z(R,ct,V):z(R,F,at),z(R,ct,at),V=at,F=ct}let O=F;s&&t==1&&(O=C+w,z(R,O,V));let[st,Z]=cu(r,o);if(c.fill!=null||st!=0){let j=I.fill=new Path2D(R),tt=c.fillTo(r,o,c.min,c.max,st),ct=S(tt);z(j,O,ct),z(j,H,ct)}if(!c.spanGaps){let j=[];j.push(...hu(u,h,a,l,U,x,n));let tt=c.width*Te/2,ct=e||t==1?tt:-tt,at=e||t==-1?-tt:tt;j.forEach($=>{$[0]+=ct,$[1]+=at}),I.gaps=j=c.gaps(r,o,a,l,j),I.clip=nl(j,d.ori,p,m,y,E)}return Z!=0&&(I.band=Z==2?[os(r,o,a,l,R,-1),os(r,o,a,l,R,1)]:os(r,o,a,l,R,Z)),I})}function op(i,t,e,n,s,r,o=Be){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let u=xn(i[l]-i[a]);u<c&&(c=u,o=xn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function Lx(i){i=i||Bo;let t=we(i.size,[.6,Be,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=ve(s),o=1-t[0],a=we(t[1],Be),l=we(t[2],1),c=we(i.disp,Bo),u=we(i.each,f=>{}),{fill:h,stroke:d}=c;return(f,g,_,p)=>rr(f,g,(m,y,E,b,C,w,x,S,z,I,R)=>{let U=m.pxRound,V=e,P=n*Te,F=a*Te,H=l*Te,O,st;b.ori==0?[O,st]=r(f,g):[st,O]=r(f,g);let Z=b.dir*(b.ori==0?1:-1),j=b.ori==0?rl:uu,tt=b.ori==0?u:(Lt,jt,ce,At,Oe,Xt,Zt)=>{u(Lt,jt,ce,Oe,At,Zt,Xt)},ct=we(f.bands,su).find(Lt=>Lt.series[0]==g),at=ct!=null?ct.dir:0,$=m.fillTo(f,g,m.min,m.max,at),dt=U(x($,C,R,z)),pt,vt,bt,_t=I,Nt=U(m.width*Te),Ut=!1,ee=null,he=null,ne=null,Re=null;h!=null&&(Nt==0||d!=null)&&(Ut=!0,ee=h.values(f,g,_,p),he=new Map,new Set(ee).forEach(Lt=>{Lt!=null&&he.set(Lt,new Path2D)}),Nt>0&&(ne=d.values(f,g,_,p),Re=new Map,new Set(ne).forEach(Lt=>{Lt!=null&&Re.set(Lt,new Path2D)})));let{x0:Ce,size:on}=c;if(Ce!=null&&on!=null){V=1,y=Ce.values(f,g,_,p),Ce.unit==2&&(y=y.map(ce=>f.posToVal(S+ce*I,b.key,!0)));let Lt=on.values(f,g,_,p);on.unit==2?vt=Lt[0]*I:vt=w(Lt[0],b,I,S)-w(0,b,I,S),_t=op(y,E,w,b,I,S,_t),bt=_t-vt+P}else _t=op(y,E,w,b,I,S,_t),bt=_t*o+P,vt=_t-bt;bt<1&&(bt=0),Nt>=vt/2&&(Nt=0),bt<5&&(U=mp);let Ue=bt>0,Mn=_t-bt-(Ue?Nt:0);vt=U($h(Mn,H,F)),pt=(V==0?vt/2:V==Z?0:vt)-V*Z*((V==0?P/2:0)+(Ue?Nt/2:0));let Me={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},mn=Ut?null:new Path2D,Je=null;if(ct!=null)Je=f.data[ct.series[1]];else{let{y0:Lt,y1:jt}=c;Lt!=null&&jt!=null&&(E=jt.values(f,g,_,p),Je=Lt.values(f,g,_,p))}let an=O*vt,k=st*vt;for(let Lt=Z==1?_:p;Lt>=_&&Lt<=p;Lt+=Z){let jt=E[Lt];if(jt==null)continue;if(Je!=null){let Y=Je[Lt]??0;if(jt-Y==0)continue;dt=x(Y,C,R,z)}let ce=b.distr!=2||c!=null?y[Lt]:Lt,At=w(ce,b,I,S),Oe=x(we(jt,$),C,R,z),Xt=U(At-pt),Zt=U(qn(Oe,dt)),L=U(Ri(Oe,dt)),M=Zt-L;if(jt!=null){let Y=jt<0?k:an,mt=jt<0?an:k;Ut?(Nt>0&&ne[Lt]!=null&&j(Re.get(ne[Lt]),Xt,L+ai(Nt/2),vt,qn(0,M-Nt),Y,mt),ee[Lt]!=null&&j(he.get(ee[Lt]),Xt,L+ai(Nt/2),vt,qn(0,M-Nt),Y,mt)):j(mn,Xt,L+ai(Nt/2),vt,qn(0,M-Nt),Y,mt),tt(f,g,Lt,Xt-Nt/2,L,vt+Nt,M)}}return Nt>0?Me.stroke=Ut?Re:mn:Ut||(Me._fill=m.width==0?m._fill:m._stroke??m._fill,Me.width=0),Me.fill=Ut?he:mn,Me})}function Dx(i,t){let e=we(t?.alignGaps,0);return(n,s,r,o)=>rr(n,s,(a,l,c,u,h,d,f,g,_,p,m)=>{[r,o]=Ka(c,r,o);let y=a.pxRound,E=O=>y(d(O,u,p,g)),b=O=>y(f(O,h,m,_)),C,w,x;u.ori==0?(C=il,x=Vr,w=Gp):(C=sl,x=Gr,w=Hp);let S=u.dir*(u.ori==0?1:-1),z=E(l[S==1?r:o]),I=z,R=[],U=[];for(let O=S==1?r:o;O>=r&&O<=o;O+=S)if(c[O]!=null){let Z=l[O],j=E(Z);R.push(I=j),U.push(b(c[O]))}let V={stroke:i(R,U,C,x,w,y),fill:null,clip:null,band:null,gaps:null,flags:kr},P=V.stroke,[F,H]=cu(n,s);if(a.fill!=null||F!=0){let O=V.fill=new Path2D(P),st=a.fillTo(n,s,a.min,a.max,F),Z=b(st);x(O,I,Z),x(O,z,Z)}if(!a.spanGaps){let O=[];O.push(...hu(l,c,r,o,S,E,e)),V.gaps=O=a.gaps(n,s,r,o,O),V.clip=nl(O,u.ori,g,_,p,m)}return H!=0&&(V.band=H==2?[os(n,s,r,o,P,-1),os(n,s,r,o,P,1)]:os(n,s,r,o,P,H)),V})}function Nx(i){return Dx(Ux,i)}function Ux(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),u=Array(o-1),h=Array(o-1);for(let d=0;d<o-1;d++)u[d]=t[d+1]-t[d],h[d]=i[d+1]-i[d],c[d]=u[d]/h[d];l[0]=c[0];for(let d=1;d<o-1;d++)c[d]===0||c[d-1]===0||c[d-1]>0!=c[d]>0?l[d]=0:(l[d]=3*(h[d-1]+h[d])/((2*h[d]+h[d-1])/c[d-1]+(h[d]+2*h[d-1])/c[d]),isFinite(l[d])||(l[d]=0));l[o-1]=c[o-2];for(let d=0;d<o-1;d++)s(a,i[d]+h[d]/3,t[d]+l[d]*h[d]/3,i[d+1]-h[d]/3,t[d+1]-l[d+1]*h[d]/3,i[d+1],t[d+1])}return a}var Jh=new Set;function ap(){for(let i of Jh)i.syncRect(!0)}zr&&(ir(m_,Ur,ap),ir(g_,Ur,ap,!0),ir(Za,Ur,()=>{An.pxRatio=Te}));var Fx=$p(),Ox=Wp();function lp(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>jh(r,o,t,e))}function Bx(i,t){return i.map((e,n)=>n==0?{}:dn({},t,e))}function jh(i,t,e,n){return dn({},t==0?e:n,i)}function qp(i,t,e){return t==null?Or:[t,e]}var kx=qp;function zx(i,t,e){return t==null?Or:Ja(t,e,nu,!0)}function Yp(i,t,e,n){return t==null?Or:Qa(t,e,i.scales[n].log,!1)}var Vx=Yp;function Zp(i,t,e,n){return t==null?Or:eu(t,e,i.scales[n].log,!1)}var Gx=Zp;function Hx(i,t,e,n,s){let r=qn(zf(i),zf(t)),o=t-i,a=Ai(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Is.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function cp(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=_n((e=+s)*Te))+"px"),[i,t,e]}function Wx(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=ke(t[2]*Te,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function An(i,t,e){let n={mode:we(i.mode,1)},s=n.mode;function r(v,T,D,N){let W=T.valToPct(v);return N+D*(T.dir==-1?1-W:W)}function o(v,T,D,N){let W=T.valToPct(v);return N+D*(T.dir==-1?W:1-W)}function a(v,T,D,N){return T.ori==0?r(v,T,D,N):o(v,T,D,N)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=xi(j0);if(i.id!=null&&(c.id=i.id),oi(c,i.class),i.title){let v=xi(t_,c);v.textContent=i.title}let u=Ti("canvas"),h=n.ctx=u.getContext("2d"),d=xi(e_,c);ir("click",d,v=>{v.target===g&&(Ve!=Tr||qe!=Ar)&&In.click(n,v)},!0);let f=n.under=xi(n_,d);d.appendChild(u);let g=n.over=xi(i_,d);i=Br(i);let _=+we(i.pxAlign,1),p=rp(_);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let m=i.ms||.001,y=n.series=s==1?lp(i.series||[],Kf,ip,!1):Bx(i.series||[null],np),E=n.axes=lp(i.axes||[],jf,tp,!0),b=n.scales={},C=n.bands=i.bands||[];C.forEach(v=>{v.fill=ve(v.fill||null),v.dir=we(v.dir,-1)});let w=s==2?y[1].facets[0].scale:y[0].scale,x={axes:ns,series:ge},S=(i.drawOrder||["axes","series"]).map(v=>x[v]);function z(v){let T=v.distr==3?D=>rs(D>0?D:v.clamp(n,D,v.min,v.max,v.key)):v.distr==4?D=>Bh(D,v.asinh):v.distr==100?D=>v.fwd(D):D=>D;return D=>{let N=T(D),{_min:W,_max:Q}=v,ht=Q-W;return(N-W)/ht}}function I(v){let T=b[v];if(T==null){let D=(i.scales||Bo)[v]||Bo;if(D.from!=null){I(D.from);let N=dn({},b[D.from],D,{key:v});N.valToPct=z(N),b[v]=N}else{T=b[v]=dn({},v==w?Op:Tx,D),T.key=v;let N=T.time,W=T.range,Q=Ps(W);if((v!=w||s==2&&!N)&&(Q&&(W[0]==null||W[1]==null)&&(W={min:W[0]==null?Of:{mode:1,hard:W[0],soft:W[0]},max:W[1]==null?Of:{mode:1,hard:W[1],soft:W[1]}},Q=!1),!Q&&el(W))){let ht=W;W=(xt,Et,Bt)=>Et==null?Or:Ja(Et,Bt,ht)}T.range=ve(W||(N?kx:v==w?T.distr==3?Vx:T.distr==4?Gx:qp:T.distr==3?Yp:T.distr==4?Zp:zx)),T.auto=ve(Q?!1:T.auto),T.clamp=ve(T.clamp||Ex),T._min=T._max=null,T.valToPct=z(T)}}}I("x"),I("y"),s==1&&y.forEach(v=>{I(v.scale)}),E.forEach(v=>{I(v.scale)});for(let v in i.scales)I(v);let R=b[w],U=R.distr,V,P;R.ori==0?(oi(c,K0),V=r,P=o):(oi(c,Q0),V=o,P=r);let F={};for(let v in b){let T=b[v];(T.min!=null||T.max!=null)&&(F[v]={min:T.min,max:T.max},T.min=T.max=null)}let H=i.tzDate||(v=>new Date(_n(v/m))),O=i.fmtDate||ru,st=m==1?K_(H):ex(H),Z=Yf(H,qf(m==1?j_:tx,O)),j=Jf(H,Zf(ix,O)),tt=[],ct=n.legend=dn({},ox,i.legend),at=n.cursor=dn({},dx,{drag:{y:s==2}},i.cursor),$=ct.show,dt=at.show,pt=ct.markers;ct.idxs=tt,pt.width=ve(pt.width),pt.dash=ve(pt.dash),pt.stroke=ve(pt.stroke),pt.fill=ve(pt.fill);let vt,bt,_t,Nt=[],Ut=[],ee,he=!1,ne={};if(ct.live){let v=y[1]?y[1].values:null;he=v!=null,ee=he?v(n,1,0):{_:0};for(let T in ee)ne[T]=Qh}if($)if(vt=Ti("table",c_,c),_t=Ti("tbody",null,vt),ct.mount(n,vt),he){bt=Ti("thead",null,vt,_t);let v=Ti("tr",null,bt);Ti("th",null,v);for(var Re in ee)Ti("th",wf,v).textContent=Re}else oi(vt,u_),ct.live&&oi(vt,h_);let Ce={show:!0},on={show:!1};function Ue(v,T){if(T==0&&(he||!ct.live||s==2))return Or;let D=[],N=Ti("tr",d_,_t,_t.childNodes[T]);oi(N,v.class),v.show||oi(N,nr);let W=Ti("th",null,N);if(pt.show){let xt=xi(f_,W);if(T>0){let Et=pt.width(n,T);Et&&(xt.style.border=Et+"px "+pt.dash(n,T)+" "+pt.stroke(n,T)),xt.style.background=pt.fill(n,T)}}let Q=xi(wf,W);v.label instanceof HTMLElement?Q.appendChild(v.label):Q.textContent=v.label,T>0&&(pt.show||(Q.style.color=v.width>0?pt.stroke(n,T):pt.fill(n,T)),Me("click",W,xt=>{if(at._lock)return;Qt(xt);let Et=y.indexOf(v);if((xt.ctrlKey||xt.metaKey)!=ct.isolate){let Bt=y.some((kt,Vt)=>Vt>0&&Vt!=Et&&kt.show);y.forEach((kt,Vt)=>{Vt>0&&Gi(Vt,Bt?Vt==Et?Ce:on:Ce,!0,un.setSeries)})}else Gi(Et,{show:!v.show},!0,un.setSeries)},!1),te&&Me(Rf,W,xt=>{at._lock||(Qt(xt),Gi(y.indexOf(v),Cr,!0,un.setSeries))},!1));for(var ht in ee){let xt=Ti("td",p_,N);xt.textContent="--",D.push(xt)}return[N,D]}let Mn=new Map;function Me(v,T,D,N=!0){let W=Mn.get(T)||{},Q=at.bind[v](n,T,D,N);Q&&(ir(v,T,W[v]=Q),Mn.set(T,W))}function mn(v,T,D){let N=Mn.get(T)||{};for(let W in N)(v==null||W==v)&&(Xh(W,T,N[W]),delete N[W]);v==null&&Mn.delete(T)}let Je=0,an=0,k=0,Lt=0,jt=0,ce=0,At=jt,Oe=ce,Xt=k,Zt=Lt,L=0,M=0,Y=0,mt=0;n.bbox={};let lt=!1,St=!1,wt=!1,nt=!1,rt=!1,yt=!1;function B(v,T,D){(D||v!=n.width||T!=n.height)&&ot(v,T),de(!1),wt=!0,St=!0,Nn()}function ot(v,T){n.width=Je=k=v,n.height=an=Lt=T,jt=ce=0,Tt(),$t();let D=n.bbox;L=D.left=tr(jt*Te,.5),M=D.top=tr(ce*Te,.5),Y=D.width=tr(k*Te,.5),mt=D.height=tr(Lt*Te,.5)}let it=3;function Rt(){let v=!1,T=0;for(;!v;){T++;let D=Sr(T),N=Vi(T);v=T==it||D&&N,v||(ot(n.width,n.height),St=!0)}}function Mt({width:v,height:T}){B(v,T)}n.setSize=Mt;function Tt(){let v=!1,T=!1,D=!1,N=!1;E.forEach((W,Q)=>{if(W.show&&W._show){let{side:ht,_size:xt}=W,Et=ht%2,Bt=W.label!=null?W.labelSize:0,kt=xt+Bt;kt>0&&(Et?(k-=kt,ht==3?(jt+=kt,N=!0):D=!0):(Lt-=kt,ht==0?(ce+=kt,v=!0):T=!0))}}),ki[0]=v,ki[1]=D,ki[2]=T,ki[3]=N,k-=Mi[1]+Mi[3],jt+=Mi[3],Lt-=Mi[2]+Mi[0],ce+=Mi[0]}function $t(){let v=jt+k,T=ce+Lt,D=jt,N=ce;function W(Q,ht){switch(Q){case 1:return v+=ht,v-ht;case 2:return T+=ht,T-ht;case 3:return D-=ht,D+ht;case 0:return N-=ht,N+ht}}E.forEach((Q,ht)=>{if(Q.show&&Q._show){let xt=Q.side;Q._pos=W(xt,Q._size),Q.label!=null&&(Q._lpos=W(xt,Q.labelSize))}})}if(at.dataIdx==null){let v=at.hover,T=v.skip=new Set(v.skip??[]);T.add(void 0);let D=v.prox=ve(v.prox),N=v.bias??=0;at.dataIdx=(W,Q,ht,xt)=>{if(Q==0)return ht;let Et=ht,Bt=D(W,Q,ht,xt)??Be,kt=Bt>=0&&Bt<Be,Vt=R.ori==0?k:Lt,ae=at.left,Ee=t[0],Se=t[Q];if(T.has(Se[ht])){Et=null;let xe=null,Kt=null,Yt;if(N==0||N==-1)for(Yt=ht;xe==null&&Yt-- >0;)T.has(Se[Yt])||(xe=Yt);if(N==0||N==1)for(Yt=ht;Kt==null&&Yt++<Se.length;)T.has(Se[Yt])||(Kt=Yt);if(xe!=null||Kt!=null)if(kt){let He=xe==null?-1/0:V(Ee[xe],R,Vt,0),Qe=Kt==null?1/0:V(Ee[Kt],R,Vt,0),Tn=ae-He,Fe=Qe-ae;Tn<=Fe?Tn<=Bt&&(Et=xe):Fe<=Bt&&(Et=Kt)}else Et=Kt==null?xe:xe==null?Kt:ht-xe<=Kt-ht?xe:Kt}else kt&&xn(ae-V(Ee[ht],R,Vt,0))>Bt&&(Et=null);return Et}}let Qt=v=>{at.event=v};at.idxs=tt,at._lock=!1;let ft=at.points;ft.show=ve(ft.show),ft.size=ve(ft.size),ft.stroke=ve(ft.stroke),ft.width=ve(ft.width),ft.fill=ve(ft.fill);let Gt=n.focus=dn({},i.focus||{alpha:.3},at.focus),te=Gt.prox>=0,It=te&&ft.one,ue=[],ze=[],Gn=[];function Mo(v,T){let D=ft.show(n,T);if(D instanceof HTMLElement)return oi(D,l_),oi(D,v.class),$i(D,-10,-10,k,Lt),g.insertBefore(D,ue[T]),D}function vr(v,T){if(s==1||T>0){let D=s==1&&b[v.scale].time,N=v.value;v.value=D?Hf(N)?Jf(H,Zf(N,O)):N||j:N||Mx,v.label=v.label||(D?px:fx)}if(It||T>0){v.width=v.width==null?1:v.width,v.paths=v.paths||Fx||T_,v.fillTo=ve(v.fillTo||Ax),v.pxAlign=+we(v.pxAlign,_),v.pxRound=rp(v.pxAlign),v.stroke=ve(v.stroke||null),v.fill=ve(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let D=Sx(qn(1,v.width),1),N=v.points=dn({},{size:D,width:qn(1,D*.2),stroke:v.stroke,space:D*2,paths:Ox,_stroke:null,_fill:null},v.points);N.show=ve(N.show),N.filter=ve(N.filter),N.fill=ve(N.fill),N.stroke=ve(N.stroke),N.paths=ve(N.paths),N.pxAlign=v.pxAlign}if($){let D=Ue(v,T);Nt.splice(T,0,D[0]),Ut.splice(T,0,D[1]),ct.values.push(null)}if(dt){tt.splice(T,0,null);let D=null;It?T==0&&(D=Mo(v,T)):T>0&&(D=Mo(v,T)),ue.splice(T,0,D),ze.splice(T,0,0),Gn.splice(T,0,0)}En("addSeries",T)}function Sh(v,T){T=T??y.length,v=s==1?jh(v,T,Kf,ip):jh(v,T,{},np),y.splice(T,0,v),vr(y[T],T)}n.addSeries=Sh;function Fa(v){if(y.splice(v,1),$){ct.values.splice(v,1),Ut.splice(v,1);let T=Nt.splice(v,1)[0];mn(null,T.firstChild),T.remove()}dt&&(tt.splice(v,1),ue.splice(v,1)[0].remove(),ze.splice(v,1),Gn.splice(v,1)),En("delSeries",v)}n.delSeries=Fa;let ki=[!1,!1,!1,!1];function Qi(v,T){if(v._show=v.show,v.show){let D=v.side%2,N=b[v.scale];N==null&&(v.scale=D?y[1].scale:w,N=b[v.scale]);let W=N.time;v.size=ve(v.size),v.space=ve(v.space),v.rotate=ve(v.rotate),Ps(v.incrs)&&v.incrs.forEach(ht=>{!Is.has(ht)&&Is.set(ht,xp(ht))}),v.incrs=ve(v.incrs||(N.distr==2?Y_:W?m==1?J_:Q_:er)),v.splits=ve(v.splits||(W&&N.distr==1?st:N.distr==3?qh:N.distr==4?_x:gx)),v.stroke=ve(v.stroke),v.grid.stroke=ve(v.grid.stroke),v.ticks.stroke=ve(v.ticks.stroke),v.border.stroke=ve(v.border.stroke);let Q=v.values;v.values=Ps(Q)&&!Ps(Q[0])?ve(Q):W?Ps(Q)?Yf(H,qf(Q,O)):Hf(Q)?nx(H,Q):Q||Z:Q||mx,v.filter=ve(v.filter||(N.distr>=3&&N.log==10?vx:N.distr==3&&N.log==2?bx:gp)),v.font=cp(v.font),v.labelFont=cp(v.labelFont),v._size=v.size(n,null,T,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(ki[T]=!0,v._el=xi(s_,d))}}function ts(v,T,D,N){let[W,Q,ht,xt]=D,Et=T%2,Bt=0;return Et==0&&(xt||Q)&&(Bt=T==0&&!W||T==2&&!ht?_n(jf.size/3):0),Et==1&&(W||ht)&&(Bt=T==1&&!Q||T==3&&!xt?_n(tp.size/2):0),Bt}let So=n.padding=(i.padding||[ts,ts,ts,ts]).map(v=>ve(we(v,ts))),Mi=n._padding=So.map((v,T)=>v(n,T,ki,0)),je,nn=null,sn=null,zi=s==1?y[0].idxs:null,ni=null,Ms=!1;function wo(v,T){if(t=v??[],n.data=n._data=t,s==2){je=0;for(let D=1;D<y.length;D++)je+=t[D][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),ni=t[0],je=ni.length;let D=t;if(U==2){D=t.slice();let N=D[0]=Array(je);for(let W=0;W<je;W++)N[W]=W}n._data=t=D}if(de(!0),En("setData"),U==2&&(wt=!0),T!==!1){let D=R;D.auto(n,Ms)?Eo():Es(w,D.min,D.max),nt=nt||at.left>=0,yt=!0,Nn()}}n.setData=wo;function Eo(){Ms=!0;let v,T;s==1&&(je>0?(nn=zi[0]=0,sn=zi[1]=je-1,v=t[0][nn],T=t[0][sn],U==2?(v=nn,T=sn):v==T&&(U==3?[v,T]=Qa(v,v,R.log,!1):U==4?[v,T]=eu(v,v,R.log,!1):R.time?T=v+_n(86400/m):[v,T]=Ja(v,T,nu,!0))):(nn=zi[0]=v=null,sn=zi[1]=T=null)),Es(w,v,T)}let br,Ss,Mr,A,G,et,J,K,Ct,Dt;function Pt(v,T,D,N,W,Q){v??=Tf,D??=su,N??="butt",W??=Tf,Q??="round",v!=br&&(h.strokeStyle=br=v),W!=Ss&&(h.fillStyle=Ss=W),T!=Mr&&(h.lineWidth=Mr=T),Q!=G&&(h.lineJoin=G=Q),N!=et&&(h.lineCap=et=N),D!=A&&h.setLineDash(A=D)}function Ft(v,T,D,N){T!=Ss&&(h.fillStyle=Ss=T),v!=J&&(h.font=J=v),D!=K&&(h.textAlign=K=D),N!=Ct&&(h.textBaseline=Ct=N)}function Wt(v,T,D,N,W=0){if(N.length>0&&v.auto(n,Ms)&&(T==null||T.min==null)){let Q=we(nn,0),ht=we(sn,N.length-1),xt=D.min==null?v_(N,Q,ht,W,v.distr==3):[D.min,D.max];v.min=Ri(v.min,D.min=xt[0]),v.max=qn(v.max,D.max=xt[1])}}let ie={min:null,max:null};function me(){for(let N in b){let W=b[N];F[N]==null&&(W.min==null||F[w]!=null&&W.auto(n,Ms))&&(F[N]=ie)}for(let N in b){let W=b[N];F[N]==null&&W.from!=null&&F[W.from]!=null&&(F[N]=ie)}F[w]!=null&&de(!0);let v={};for(let N in F){let W=F[N];if(W!=null){let Q=v[N]=Br(b[N],C_);if(W.min!=null)dn(Q,W);else if(N!=w||s==2)if(je==0&&Q.from==null){let ht=Q.range(n,null,null,N);Q.min=ht[0],Q.max=ht[1]}else Q.min=Be,Q.max=-Be}}if(je>0){y.forEach((N,W)=>{if(s==1){let Q=N.scale,ht=F[Q];if(ht==null)return;let xt=v[Q];if(W==0){let Et=xt.range(n,xt.min,xt.max,Q);xt.min=Et[0],xt.max=Et[1],nn=Ai(xt.min,t[0]),sn=Ai(xt.max,t[0]),sn-nn>1&&(t[0][nn]<xt.min&&nn++,t[0][sn]>xt.max&&sn--),N.min=ni[nn],N.max=ni[sn]}else N.show&&N.auto&&Wt(xt,ht,N,t[W],N.sorted);N.idxs[0]=nn,N.idxs[1]=sn}else if(W>0&&N.show&&N.auto){let[Q,ht]=N.facets,xt=Q.scale,Et=ht.scale,[Bt,kt]=t[W],Vt=v[xt],ae=v[Et];Vt!=null&&Wt(Vt,F[xt],Q,Bt,Q.sorted),ae!=null&&Wt(ae,F[Et],ht,kt,ht.sorted),N.min=ht.min,N.max=ht.max}});for(let N in v){let W=v[N],Q=F[N];if(W.from==null&&(Q==null||Q.min==null)){let ht=W.range(n,W.min==Be?null:W.min,W.max==-Be?null:W.max,N);W.min=ht[0],W.max=ht[1]}}}for(let N in v){let W=v[N];if(W.from!=null){let Q=v[W.from];if(Q.min==null)W.min=W.max=null;else{let ht=W.range(n,Q.min,Q.max,N);W.min=ht[0],W.max=ht[1]}}}let T={},D=!1;for(let N in v){let W=v[N],Q=b[N];if(Q.min!=W.min||Q.max!=W.max){Q.min=W.min,Q.max=W.max;let ht=Q.distr;Q._min=ht==3?rs(Q.min):ht==4?Bh(Q.min,Q.asinh):ht==100?Q.fwd(Q.min):Q.min,Q._max=ht==3?rs(Q.max):ht==4?Bh(Q.max,Q.asinh):ht==100?Q.fwd(Q.max):Q.max,T[N]=D=!0}}if(D){y.forEach((N,W)=>{s==2?W>0&&T.y&&(N._paths=null):T[N.scale]&&(N._paths=null)});for(let N in T)wt=!0,En("setScale",N);dt&&at.left>=0&&(nt=yt=!0)}for(let N in F)F[N]=null}function Ht(v){let T=$h(nn-1,0,je-1),D=$h(sn+1,0,je-1);for(;v[T]==null&&T>0;)T--;for(;v[D]==null&&D<je-1;)D++;return[T,D]}function ge(){if(je>0){let v=y.some(T=>T._focus)&&Dt!=Gt.alpha;v&&(h.globalAlpha=Dt=Gt.alpha),y.forEach((T,D)=>{if(D>0&&T.show&&(Ze(D,!1),Ze(D,!0),T._paths==null)){let N=Dt;Dt!=T.alpha&&(h.globalAlpha=Dt=T.alpha);let W=s==2?[0,t[D][0].length-1]:Ht(t[D]);T._paths=T.paths(n,D,W[0],W[1]),Dt!=N&&(h.globalAlpha=Dt=N)}}),y.forEach((T,D)=>{if(D>0&&T.show){let N=Dt;Dt!=T.alpha&&(h.globalAlpha=Dt=T.alpha),T._paths!=null&&Le(D,!1);{let W=T._paths!=null?T._paths.gaps:null,Q=T.points.show(n,D,nn,sn,W),ht=T.points.filter(n,D,Q,W);(Q||ht)&&(T.points._paths=T.points.paths(n,D,nn,sn,ht),Le(D,!0))}Dt!=N&&(h.globalAlpha=Dt=N),En("drawSeries",D)}}),v&&(h.globalAlpha=Dt=1)}}function Ze(v,T){let D=T?y[v].points:y[v];D._stroke=D.stroke(n,v),D._fill=D.fill(n,v)}function Le(v,T){let D=T?y[v].points:y[v],{stroke:N,fill:W,clip:Q,flags:ht,_stroke:xt=D._stroke,_fill:Et=D._fill,_width:Bt=D.width}=D._paths;Bt=ke(Bt*Te,3);let kt=null,Vt=Bt%2/2;T&&Et==null&&(Et=Bt>0?"#fff":xt);let ae=D.pxAlign==1&&Vt>0;if(ae&&h.translate(Vt,Vt),!T){let Ee=L-Bt/2,Se=M-Bt/2,xe=Y+Bt,Kt=mt+Bt;kt=new Path2D,kt.rect(Ee,Se,xe,Kt)}T?zt(xt,Bt,D.dash,D.cap,Et,N,W,ht,Q):De(v,xt,Bt,D.dash,D.cap,Et,N,W,ht,kt,Q),ae&&h.translate(-Vt,-Vt)}function De(v,T,D,N,W,Q,ht,xt,Et,Bt,kt){let Vt=!1;Et!=0&&C.forEach((ae,Ee)=>{if(ae.series[0]==v){let Se=y[ae.series[1]],xe=t[ae.series[1]],Kt=(Se._paths||Bo).band;Ps(Kt)&&(Kt=ae.dir==1?Kt[0]:Kt[1]);let Yt,He=null;Se.show&&Kt&&M_(xe,nn,sn)?(He=ae.fill(n,Ee)||Q,Yt=Se._paths.clip):Kt=null,zt(T,D,N,W,He,ht,xt,Et,Bt,kt,Yt,Kt),Vt=!0}}),Vt||zt(T,D,N,W,Q,ht,xt,Et,Bt,kt)}let gn=kr|Zh;function zt(v,T,D,N,W,Q,ht,xt,Et,Bt,kt,Vt){Pt(v,T,D,N,W),(Et||Bt||Vt)&&(h.save(),Et&&h.clip(Et),Bt&&h.clip(Bt)),Vt?(xt&gn)==gn?(h.clip(Vt),kt&&h.clip(kt),ye(W,ht),ln(v,Q,T)):xt&Zh?(ye(W,ht),h.clip(Vt),ln(v,Q,T)):xt&kr&&(h.save(),h.clip(Vt),kt&&h.clip(kt),ye(W,ht),h.restore(),ln(v,Q,T)):(ye(W,ht),ln(v,Q,T)),(Et||Bt||Vt)&&h.restore()}function ln(v,T,D){D>0&&(T instanceof Map?T.forEach((N,W)=>{h.strokeStyle=br=W,h.stroke(N)}):T!=null&&v&&h.stroke(T))}function ye(v,T){T instanceof Map?T.forEach((D,N)=>{h.fillStyle=Ss=N,h.fill(D)}):T!=null&&v&&h.fill(T)}function es(v,T,D,N){let W=E[v],Q;if(N<=0)Q=[0,0];else{let ht=W._space=W.space(n,v,T,D,N),xt=W._incrs=W.incrs(n,v,T,D,N,ht);Q=Hx(T,D,xt,N,ht)}return W._found=Q}function cn(v,T,D,N,W,Q,ht,xt,Et,Bt){let kt=ht%2/2;_==1&&h.translate(kt,kt),Pt(xt,ht,Et,Bt,xt),h.beginPath();let Vt,ae,Ee,Se,xe=W+(N==0||N==3?-Q:Q);D==0?(ae=W,Se=xe):(Vt=W,Ee=xe);for(let Kt=0;Kt<v.length;Kt++)T[Kt]!=null&&(D==0?Vt=Ee=v[Kt]:ae=Se=v[Kt],h.moveTo(Vt,ae),h.lineTo(Ee,Se));h.stroke(),_==1&&h.translate(-kt,-kt)}function Sr(v){let T=!0;return E.forEach((D,N)=>{if(!D.show)return;let W=b[D.scale];if(W.min==null){D._show&&(T=!1,D._show=!1,de(!1));return}else D._show||(T=!1,D._show=!0,de(!1));let Q=D.side,ht=Q%2,{min:xt,max:Et}=W,[Bt,kt]=es(N,xt,Et,ht==0?k:Lt);if(kt==0)return;let Vt=W.distr==2,ae=D._splits=D.splits(n,N,xt,Et,Bt,kt,Vt),Ee=W.distr==2?ae.map(Yt=>ni[Yt]):ae,Se=W.distr==2?ni[ae[1]]-ni[ae[0]]:Bt,xe=D._values=D.values(n,D.filter(n,Ee,N,kt,Se),N,kt,Se);D._rotate=Q==2?D.rotate(n,xe,N,kt):0;let Kt=D._size;D._size=yi(D.size(n,xe,N,v)),Kt!=null&&D._size!=Kt&&(T=!1)}),T}function Vi(v){let T=!0;return So.forEach((D,N)=>{let W=D(n,N,ki,v);W!=Mi[N]&&(T=!1),Mi[N]=W}),T}function ns(){for(let v=0;v<E.length;v++){let T=E[v];if(!T.show||!T._show)continue;let D=T.side,N=D%2,W,Q,ht=T.stroke(n,v),xt=D==0||D==3?-1:1,[Et,Bt]=T._found;if(T.label!=null){let Xn=T.labelGap*xt,ri=_n((T._lpos+Xn)*Te);Ft(T.labelFont[0],ht,"center",D==2?"top":Ef),h.save(),N==1?(W=Q=0,h.translate(ri,_n(M+mt/2)),h.rotate((D==3?-Ya:Ya)/2)):(W=_n(L+Y/2),Q=ri);let Ks=pp(T.label)?T.label(n,v,Et,Bt):T.label;h.fillText(Ks,W,Q),h.restore()}if(Bt==0)continue;let kt=b[T.scale],Vt=N==0?Y:mt,ae=N==0?L:M,Ee=T._splits,Se=kt.distr==2?Ee.map(Xn=>ni[Xn]):Ee,xe=kt.distr==2?ni[Ee[1]]-ni[Ee[0]]:Et,Kt=T.ticks,Yt=T.border,He=Kt.show?Kt.size:0,Qe=_n(He*Te),Tn=_n((T.alignTo==2?T._size-He-T.gap:T.gap)*Te),Fe=T._rotate*-Ya/180,tn=p(T._pos*Te),ii=(Qe+Tn)*xt,Wn=tn+ii;Q=N==0?Wn:0,W=N==1?Wn:0;let mi=T.font[0],Si=T.align==1?Dr:T.align==2?Uh:Fe>0?Dr:Fe<0?Uh:N==0?"center":D==3?Uh:Dr,Wi=Fe||N==1?"middle":D==2?"top":Ef;Ft(mi,ht,Si,Wi);let si=T.font[1]*T.lineGap,gi=Ee.map(Xn=>p(a(Xn,kt,Vt,ae))),wi=T._values;for(let Xn=0;Xn<wi.length;Xn++){let ri=wi[Xn];if(ri!=null){N==0?W=gi[Xn]:Q=gi[Xn],ri=""+ri;let Ks=ri.indexOf(`
`)==-1?[ri]:ri.split(/\n/gm);for(let $n=0;$n<Ks.length;$n++){let pf=Ks[$n];Fe?(h.save(),h.translate(W,Q+$n*si),h.rotate(Fe),h.fillText(pf,0,0),h.restore()):h.fillText(pf,W,Q+$n*si)}}}Kt.show&&cn(gi,Kt.filter(n,Se,v,Bt,xe),N,D,tn,Qe,ke(Kt.width*Te,3),Kt.stroke(n,v),Kt.dash,Kt.cap);let Xi=T.grid;Xi.show&&cn(gi,Xi.filter(n,Se,v,Bt,xe),N,N==0?2:1,N==0?M:L,N==0?mt:Y,ke(Xi.width*Te,3),Xi.stroke(n,v),Xi.dash,Xi.cap),Yt.show&&cn([tn],[1],N==0?1:0,N==0?1:2,N==1?M:L,N==1?mt:Y,ke(Yt.width*Te,3),Yt.stroke(n,v),Yt.dash,Yt.cap)}En("drawAxes")}function de(v){y.forEach((T,D)=>{D>0&&(T._paths=null,v&&(s==1?(T.min=null,T.max=null):T.facets.forEach(N=>{N.min=null,N.max=null})))})}let Ke=!1,Hn=!1,Ne=[];function hn(){Hn=!1;for(let v=0;v<Ne.length;v++)En(...Ne[v]);Ne.length=0}function Nn(){Ke||(F_(Zd),Ke=!0)}function Oa(v,T=!1){Ke=!0,Hn=T,v(n),Zd(),T&&Ne.length>0&&queueMicrotask(hn)}n.batch=Oa;function Zd(){if(lt&&(me(),lt=!1),wt&&(Rt(),wt=!1),St){if(We(f,Dr,jt),We(f,"top",ce),We(f,No,k),We(f,Uo,Lt),We(g,Dr,jt),We(g,"top",ce),We(g,No,k),We(g,Uo,Lt),We(d,No,Je),We(d,Uo,an),u.width=_n(Je*Te),u.height=_n(an*Te),E.forEach(({_el:v,_show:T,_size:D,_pos:N,side:W})=>{if(v!=null)if(T){let Q=W===3||W===0?D:0,ht=W%2==1;We(v,ht?"left":"top",N-Q),We(v,ht?"width":"height",D),We(v,ht?"top":"left",ht?ce:jt),We(v,ht?"height":"width",ht?Lt:k),Wh(v,nr)}else oi(v,nr)}),br=Ss=Mr=G=et=J=K=Ct=A=null,Dt=1,Ro(!0),jt!=At||ce!=Oe||k!=Xt||Lt!=Zt){de(!1);let v=k/Xt,T=Lt/Zt;if(dt&&!nt&&at.left>=0){at.left*=v,at.top*=T,wr&&$i(wr,_n(at.left),0,k,Lt),Er&&$i(Er,0,_n(at.top),k,Lt);for(let D=0;D<ue.length;D++){let N=ue[D];N!=null&&(ze[D]*=v,Gn[D]*=T,$i(N,yi(ze[D]),yi(Gn[D]),k,Lt))}}if(Ge.show&&!rt&&Ge.left>=0&&Ge.width>0){Ge.left*=v,Ge.width*=v,Ge.top*=T,Ge.height*=T;for(let D in Ch)We(Rr,D,Ge[D])}At=jt,Oe=ce,Xt=k,Zt=Lt}En("setSize"),St=!1}Je>0&&an>0&&(h.clearRect(0,0,u.width,u.height),En("drawClear"),S.forEach(v=>v()),En("draw")),Ge.show&&rt&&(Ba(Ge),rt=!1),dt&&nt&&(js(null,!0,!1),nt=!1),ct.show&&ct.live&&yt&&(Ah(),yt=!1),l||(l=!0,n.status=1,En("ready")),Ms=!1,Ke=!1}n.redraw=(v,T)=>{wt=T||!1,v!==!1?Es(w,R.min,R.max):Nn()};function wh(v,T){let D=b[v];if(D.from==null){if(je==0){let N=D.range(n,T.min,T.max,v);T.min=N[0],T.max=N[1]}if(T.min>T.max){let N=T.min;T.min=T.max,T.max=N}if(je>1&&T.min!=null&&T.max!=null&&T.max-T.min<1e-16)return;v==w&&D.distr==2&&je>0&&(T.min=Ai(T.min,t[0]),T.max=Ai(T.max,t[0]),T.min==T.max&&T.max++),F[v]=T,lt=!0,Nn()}}n.setScale=wh;let Eh,Th,wr,Er,Jd,jd,Tr,Ar,Kd,Qd,Ve,qe,ws=!1,In=at.drag,Sn=In.x,wn=In.y;dt&&(at.x&&(Eh=xi(o_,g)),at.y&&(Th=xi(a_,g)),R.ori==0?(wr=Eh,Er=Th):(wr=Th,Er=Eh),Ve=at.left,qe=at.top);let Ge=n.select=dn({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Rr=Ge.show?xi(r_,Ge.over?g:f):null;function Ba(v,T){if(Ge.show){for(let D in v)Ge[D]=v[D],D in Ch&&We(Rr,D,v[D]);T!==!1&&En("setSelect")}}n.setSelect=Ba;function L0(v){if(y[v].show)$&&Wh(Nt[v],nr);else if($&&oi(Nt[v],nr),dt){let D=It?ue[0]:ue[v];D!=null&&$i(D,-10,-10,k,Lt)}}function Es(v,T,D){wh(v,{min:T,max:D})}function Gi(v,T,D,N){T.focus!=null&&O0(v),T.show!=null&&y.forEach((W,Q)=>{Q>0&&(v==Q||v==null)&&(W.show=T.show,L0(Q),s==2?(Es(W.facets[0].scale,null,null),Es(W.facets[1].scale,null,null)):Es(W.scale,null,null),Nn())}),D!==!1&&En("setSeries",v,T),N&&Co("setSeries",n,v,T)}n.setSeries=Gi;function D0(v,T){dn(C[v],T)}function N0(v,T){v.fill=ve(v.fill||null),v.dir=we(v.dir,-1),T=T??C.length,C.splice(T,0,v)}function U0(v){v==null?C.length=0:C.splice(v,1)}n.addBand=N0,n.setBand=D0,n.delBand=U0;function F0(v,T){y[v].alpha=T,dt&&ue[v]!=null&&(ue[v].style.opacity=T),$&&Nt[v]&&(Nt[v].style.opacity=T)}let is,Ts,Js,Cr={focus:!0};function O0(v){if(v!=Js){let T=v==null,D=Gt.alpha!=1;y.forEach((N,W)=>{if(s==1||W>0){let Q=T||W==0||W==v;N._focus=T?null:Q,D&&F0(W,Q?1:Gt.alpha)}}),Js=v,D&&Nn()}}$&&te&&Me(Cf,vt,v=>{at._lock||(Qt(v),Js!=null&&Gi(null,Cr,!0,un.setSeries))});function Hi(v,T,D){let N=b[T];D&&(v=v/Te-(N.ori==1?ce:jt));let W=k;N.ori==1&&(W=Lt,v=W-v),N.dir==-1&&(v=W-v);let Q=N._min,ht=N._max,xt=v/W,Et=Q+(ht-Q)*xt,Bt=N.distr;return Bt==3?Fr(10,Et):Bt==4?w_(Et,N.asinh):Bt==100?N.bwd(Et):Et}function B0(v,T){let D=Hi(v,w,T);return Ai(D,t[0],nn,sn)}n.valToIdx=v=>Ai(v,t[0]),n.posToIdx=B0,n.posToVal=Hi,n.valToPos=(v,T,D)=>b[T].ori==0?r(v,b[T],D?Y:k,D?L:0):o(v,b[T],D?mt:Lt,D?M:0),n.setCursor=(v,T,D)=>{Ve=v.left,qe=v.top,js(null,T,D)};function tf(v,T){We(Rr,Dr,Ge.left=v),We(Rr,No,Ge.width=T)}function ef(v,T){We(Rr,"top",Ge.top=v),We(Rr,Uo,Ge.height=T)}let To=R.ori==0?tf:ef,Ao=R.ori==1?tf:ef;function k0(){if($&&ct.live)for(let v=s==2?1:0;v<y.length;v++){if(v==0&&he)continue;let T=ct.values[v],D=0;for(let N in T)Ut[v][D++].firstChild.nodeValue=T[N]}}function Ah(v,T){if(v!=null&&(v.idxs?v.idxs.forEach((D,N)=>{tt[N]=D}):R_(v.idx)||tt.fill(v.idx),ct.idx=tt[0]),$&&ct.live){for(let D=0;D<y.length;D++)(D>0||s==1&&!he)&&z0(D,tt[D]);k0()}yt=!1,T!==!1&&En("setLegend")}n.setLegend=Ah;function z0(v,T){let D=y[v],N=v==0&&U==2?ni:t[v],W;he?W=D.values(n,v,T)??ne:(W=D.value(n,T==null?null:N[T],v,T),W=W==null?ne:{_:W}),ct.values[v]=W}function js(v,T,D){Kd=Ve,Qd=qe,[Ve,qe]=at.move(n,Ve,qe),at.left=Ve,at.top=qe,dt&&(wr&&$i(wr,_n(Ve),0,k,Lt),Er&&$i(Er,0,_n(qe),k,Lt));let N,W=nn>sn;is=Be,Ts=null;let Q=R.ori==0?k:Lt,ht=R.ori==1?k:Lt;if(Ve<0||je==0||W){N=at.idx=null;for(let xt=0;xt<y.length;xt++){let Et=ue[xt];Et!=null&&$i(Et,-10,-10,k,Lt)}te&&Gi(null,Cr,!0,v==null&&un.setSeries),ct.live&&(tt.fill(N),yt=!0)}else{let xt,Et,Bt;s==1&&(xt=R.ori==0?Ve:qe,Et=Hi(xt,w),N=at.idx=Ai(Et,t[0],nn,sn),Bt=V(t[0][N],R,Q,0));let kt=-10,Vt=-10,ae=0,Ee=0,Se=!0,xe="",Kt="";for(let Yt=s==2?1:0;Yt<y.length;Yt++){let He=y[Yt],Qe=tt[Yt],Tn=Qe==null?null:s==1?t[Yt][Qe]:t[Yt][1][Qe],Fe=at.dataIdx(n,Yt,N,Et),tn=Fe==null?null:s==1?t[Yt][Fe]:t[Yt][1][Fe];if(yt=yt||tn!=Tn||Fe!=Qe,tt[Yt]=Fe,Yt>0&&He.show){let ii=Fe==null?-10:Fe==N?Bt:V(s==1?t[0][Fe]:t[Yt][0][Fe],R,Q,0),Wn=tn==null?-10:P(tn,s==1?b[He.scale]:b[He.facets[1].scale],ht,0);if(te&&tn!=null){let mi=R.ori==1?Ve:qe,Si=xn(Gt.dist(n,Yt,Fe,Wn,mi));if(Si<is){let Wi=Gt.bias;if(Wi!=0){let si=Hi(mi,He.scale),gi=tn>=0?1:-1,wi=si>=0?1:-1;wi==gi&&(wi==1?Wi==1?tn>=si:tn<=si:Wi==1?tn<=si:tn>=si)&&(is=Si,Ts=Yt)}else is=Si,Ts=Yt}}if(yt||It){let mi,Si;R.ori==0?(mi=ii,Si=Wn):(mi=Wn,Si=ii);let Wi,si,gi,wi,Xi,Xn,ri=!0,Ks=ft.bbox;if(Ks!=null){ri=!1;let $n=Ks(n,Yt);gi=$n.left,wi=$n.top,Wi=$n.width,si=$n.height}else gi=mi,wi=Si,Wi=si=ft.size(n,Yt);if(Xn=ft.fill(n,Yt),Xi=ft.stroke(n,Yt),It)Yt==Ts&&is<=Gt.prox&&(kt=gi,Vt=wi,ae=Wi,Ee=si,Se=ri,xe=Xn,Kt=Xi);else{let $n=ue[Yt];$n!=null&&(ze[Yt]=gi,Gn[Yt]=wi,Ff($n,Wi,si,ri),Nf($n,Xn,Xi),$i($n,yi(gi),yi(wi),k,Lt))}}}}if(It){let Yt=Gt.prox,He=Js==null?is<=Yt:is>Yt||Ts!=Js;if(yt||He){let Qe=ue[0];Qe!=null&&(ze[0]=kt,Gn[0]=Vt,Ff(Qe,ae,Ee,Se),Nf(Qe,xe,Kt),$i(Qe,yi(kt),yi(Vt),k,Lt))}}}if(Ge.show&&ws)if(v!=null){let[xt,Et]=un.scales,[Bt,kt]=un.match,[Vt,ae]=v.cursor.sync.scales,Ee=v.cursor.drag;if(Sn=Ee._x,wn=Ee._y,Sn||wn){let{left:Se,top:xe,width:Kt,height:Yt}=v.select,He=v.scales[Vt].ori,Qe=v.posToVal,Tn,Fe,tn,ii,Wn,mi=xt!=null&&Bt(xt,Vt),Si=Et!=null&&kt(Et,ae);mi&&Sn?(He==0?(Tn=Se,Fe=Kt):(Tn=xe,Fe=Yt),tn=b[xt],ii=V(Qe(Tn,Vt),tn,Q,0),Wn=V(Qe(Tn+Fe,Vt),tn,Q,0),To(Ri(ii,Wn),xn(Wn-ii))):To(0,Q),Si&&wn?(He==1?(Tn=Se,Fe=Kt):(Tn=xe,Fe=Yt),tn=b[Et],ii=P(Qe(Tn,ae),tn,ht,0),Wn=P(Qe(Tn+Fe,ae),tn,ht,0),Ao(Ri(ii,Wn),xn(Wn-ii))):Ao(0,ht)}else Ph()}else{let xt=xn(Kd-Jd),Et=xn(Qd-jd);if(R.ori==1){let ae=xt;xt=Et,Et=ae}Sn=In.x&&xt>=In.dist,wn=In.y&&Et>=In.dist;let Bt=In.uni;Bt!=null?Sn&&wn&&(Sn=xt>=Bt,wn=Et>=Bt,!Sn&&!wn&&(Et>xt?wn=!0:Sn=!0)):In.x&&In.y&&(Sn||wn)&&(Sn=wn=!0);let kt,Vt;Sn&&(R.ori==0?(kt=Tr,Vt=Ve):(kt=Ar,Vt=qe),To(Ri(kt,Vt),xn(Vt-kt)),wn||Ao(0,ht)),wn&&(R.ori==1?(kt=Tr,Vt=Ve):(kt=Ar,Vt=qe),Ao(Ri(kt,Vt),xn(Vt-kt)),Sn||To(0,Q)),!Sn&&!wn&&(To(0,0),Ao(0,0))}if(In._x=Sn,In._y=wn,v==null){if(D){if(ff!=null){let[xt,Et]=un.scales;un.values[0]=xt!=null?Hi(R.ori==0?Ve:qe,xt):null,un.values[1]=Et!=null?Hi(R.ori==1?Ve:qe,Et):null}Co(Fh,n,Ve,qe,k,Lt,N)}if(te){let xt=D&&un.setSeries,Et=Gt.prox;Js==null?is<=Et&&Gi(Ts,Cr,!0,xt):is>Et?Gi(null,Cr,!0,xt):Ts!=Js&&Gi(Ts,Cr,!0,xt)}}yt&&(ct.idx=N,Ah()),T!==!1&&En("setCursor")}let As=null;Object.defineProperty(n,"rect",{get(){return As==null&&Ro(!1),As}});function Ro(v=!1){v?As=null:(As=g.getBoundingClientRect(),En("syncRect",As))}function nf(v,T,D,N,W,Q,ht){at._lock||ws&&v!=null&&v.movementX==0&&v.movementY==0||(Rh(v,T,D,N,W,Q,ht,!1,v!=null),v!=null?js(null,!0,!0):js(T,!0,!1))}function Rh(v,T,D,N,W,Q,ht,xt,Et){if(As==null&&Ro(!1),Qt(v),v!=null)D=v.clientX-As.left,N=v.clientY-As.top;else{if(D<0||N<0){Ve=-10,qe=-10;return}let[Bt,kt]=un.scales,Vt=T.cursor.sync,[ae,Ee]=Vt.values,[Se,xe]=Vt.scales,[Kt,Yt]=un.match,He=T.axes[0].side%2==1,Qe=R.ori==0?k:Lt,Tn=R.ori==1?k:Lt,Fe=He?Q:W,tn=He?W:Q,ii=He?N:D,Wn=He?D:N;if(Se!=null?D=Kt(Bt,Se)?a(ae,b[Bt],Qe,0):-10:D=Qe*(ii/Fe),xe!=null?N=Yt(kt,xe)?a(Ee,b[kt],Tn,0):-10:N=Tn*(Wn/tn),R.ori==1){let mi=D;D=N,N=mi}}Et&&(T==null||T.cursor.event.type==Fh)&&((D<=1||D>=k-1)&&(D=tr(D,k)),(N<=1||N>=Lt-1)&&(N=tr(N,Lt))),xt?(Jd=D,jd=N,[Tr,Ar]=at.move(n,D,N)):(Ve=D,qe=N)}let Ch={width:0,height:0,left:0,top:0};function Ph(){Ba(Ch,!1)}let sf,rf,of,af;function lf(v,T,D,N,W,Q,ht){ws=!0,Sn=wn=In._x=In._y=!1,Rh(v,T,D,N,W,Q,ht,!0,!1),v!=null&&(Me(Oh,Gh,cf,!1),Co(Af,n,Tr,Ar,k,Lt,null));let{left:xt,top:Et,width:Bt,height:kt}=Ge;sf=xt,rf=Et,of=Bt,af=kt}function cf(v,T,D,N,W,Q,ht){ws=In._x=In._y=!1,Rh(v,T,D,N,W,Q,ht,!1,!0);let{left:xt,top:Et,width:Bt,height:kt}=Ge,Vt=Bt>0||kt>0,ae=sf!=xt||rf!=Et||of!=Bt||af!=kt;if(Vt&&ae&&Ba(Ge),In.setScale&&Vt&&ae){let Ee=xt,Se=Bt,xe=Et,Kt=kt;if(R.ori==1&&(Ee=Et,Se=kt,xe=xt,Kt=Bt),Sn&&Es(w,Hi(Ee,w),Hi(Ee+Se,w)),wn)for(let Yt in b){let He=b[Yt];Yt!=w&&He.from==null&&He.min!=Be&&Es(Yt,Hi(xe+Kt,Yt),Hi(xe,Yt))}Ph()}else at.lock&&(at._lock=!at._lock,js(T,!0,v!=null));v!=null&&(mn(Oh,Gh),Co(Oh,n,Ve,qe,k,Lt,null))}function V0(v,T,D,N,W,Q,ht){if(at._lock)return;Qt(v);let xt=ws;if(ws){let Et=!0,Bt=!0,kt=10,Vt,ae;R.ori==0?(Vt=Sn,ae=wn):(Vt=wn,ae=Sn),Vt&&ae&&(Et=Ve<=kt||Ve>=k-kt,Bt=qe<=kt||qe>=Lt-kt),Vt&&Et&&(Ve=Ve<Tr?0:k),ae&&Bt&&(qe=qe<Ar?0:Lt),js(null,!0,!0),ws=!1}Ve=-10,qe=-10,tt.fill(null),js(null,!0,!0),xt&&(ws=xt)}function hf(v,T,D,N,W,Q,ht){at._lock||(Qt(v),Eo(),Ph(),v!=null&&Co(Pf,n,Ve,qe,k,Lt,null))}function uf(){E.forEach(Wx),B(n.width,n.height,!0)}ir(Za,Ur,uf);let Pr={};Pr.mousedown=lf,Pr.mousemove=nf,Pr.mouseup=cf,Pr.dblclick=hf,Pr.setSeries=(v,T,D,N)=>{let W=un.match[2];D=W(n,T,D),D!=-1&&Gi(D,N,!0,!1)},dt&&(Me(Af,g,lf),Me(Fh,g,nf),Me(Rf,g,v=>{Qt(v),Ro(!1)}),Me(Cf,g,V0),Me(Pf,g,hf),Jh.add(n),n.syncRect=Ro);let ka=n.hooks=i.hooks||{};function En(v,T,D){Hn?Ne.push([v,T,D]):v in ka&&ka[v].forEach(N=>{N.call(null,n,T,D)})}(i.plugins||[]).forEach(v=>{for(let T in v.hooks)ka[T]=(ka[T]||[]).concat(v.hooks[T])});let df=(v,T,D)=>D,un=dn({key:null,setSeries:!1,filters:{pub:Vf,sub:Vf},scales:[w,y[1]?y[1].scale:null],match:[Gf,Gf,df],values:[null,null]},at.sync);un.match.length==2&&un.match.push(df),at.sync=un;let ff=un.key,Ih=Bp(ff);function Co(v,T,D,N,W,Q,ht){un.filters.pub(v,T,D,N,W,Q,ht)&&Ih.pub(v,T,D,N,W,Q,ht)}Ih.sub(n);function G0(v,T,D,N,W,Q,ht){un.filters.sub(v,T,D,N,W,Q,ht)&&Pr[v](null,T,D,N,W,Q,ht)}n.pub=G0;function H0(){Ih.unsub(n),Jh.delete(n),Mn.clear(),Xh(Za,Ur,uf),c.remove(),vt?.remove(),En("destroy")}n.destroy=H0;function Lh(){En("init",i,t),wo(t||i.data,!1),F[w]?wh(w,F[w]):Eo(),rt=Ge.show&&(Ge.width>0||Ge.height>0),nt=yt=!0,B(i.width,i.height)}return y.forEach(vr),E.forEach(Qi),e?e instanceof HTMLElement?(e.appendChild(c),Lh()):e(n,Lh):Lh(),n}An.assign=dn;An.fmtNum=iu;An.rangeNum=Ja;An.rangeLog=Qa;An.rangeAsinh=eu;An.orient=rr;An.pxRatio=Te;An.join=U_;An.fmtDate=ru,An.tzDate=$_;An.sync=Bp;{An.addGap=Rx,An.clipGaps=nl;let i=An.paths={points:Wp};i.linear=$p,i.stepped=Ix,i.bars=Lx,i.spline=Nx}var ol=class{constructor(t){this.payload=t}payload;place={joint:0,contour:0,station:0};listeners=[];get joint(){return this.payload.joints[this.place.joint]}get facts(){return this.payload.facts[this.place.joint]}get contour(){return this.joint.contours[this.place.contour]}get s(){return this.contour.stations.s[this.place.station]}listen(t){this.listeners.push(t)}go(t,e=""){let n=t.joint??this.place.joint,s=this.payload.joints[n].contours,r=Math.min(t.contour??(t.joint===void 0?this.place.contour:0),s.length-1),o=s[r].stations.s.length,a=Math.max(0,Math.min(o-1,t.station??0));this.place={joint:n,contour:r,station:a};for(let l of this.listeners)l(this.place,e)}step(t,e="keys"){let n=this.contour.stations.s.length,s=this.place.station+t,r=this.place.contour;this.contour.closed?s=(s%n+n)%n:s<0&&r>0?(r-=1,s=this.joint.contours[r].stations.s.length-1):s>=n&&r<this.joint.contours.length-1&&(r+=1,s=0),this.go({contour:r,station:s},e)}stretches(t=this.place.joint){let e=this.payload.joints[t].contours,n=e.reduce((a,l)=>a+l.length_mm,0),s=e.length>1?n*.03:0,r=0;return{stretches:e.map((a,l)=>{let c={contour:l,start:r,length:a.length_mm};return r+=a.length_mm+s,c}),length:r-s}}get unrolled(){return this.stretches().stretches[this.place.contour].start+this.s}at(t){let{stretches:e}=this.stretches(),n={contour:0,station:0},s=1/0;for(let r of e){let o=Math.max(0,Math.min(r.length,t-r.start)),a=Math.abs(t-r.start-o);a>=s||(s=a,n={contour:r.contour,station:fu(this.joint.contours[r.contour].stations.s,o)})}return n}showFinding(t,e="finding",n=as(t)[0]){if(!n)return;let s=this.payload.joints.findIndex(o=>o.id===t.joint),r=this.payload.joints[s].contours.findIndex(o=>o.id===n.contour);this.go({joint:s,contour:r,station:n.station},e)}neighbourFinding(t){let{stretches:e}=this.stretches(),n=this.unrolled,s=this.payload.findings.filter(a=>a.joint===this.joint.id&&a.station!==null).flatMap(a=>as(a).map(l=>{let c=this.joint.contours.findIndex(u=>u.id===l.contour);return{finding:a,spot:l,at:e[c].start+this.joint.contours[c].stations.s[l.station]}})).sort((a,l)=>a.at-l.at||a.finding.n-l.finding.n);if(!s.length)return null;let r=s.filter(a=>t>0?a.at>n+1e-6:a.at<n-1e-6);return t>0?r[0]??s[0]:r.at(-1)??s.at(-1)}findingsHere(t=this.place){let e=this.payload.joints[t.joint];return du(this.payload.findings,e,e.contours[t.contour],t.station)}},Xx=1;function du(i,t,e,n){let s=e.stations.s;return i.filter(r=>r.joint!==t.id||r.station===null?!1:r.places.some(o=>o.contour===e.id&&(zo(o,s[n])||o.station===n))?!0:r.contour!==e.id?!1:r.from_s!==null&&r.to_s!==null?zo(r,s[n]):r.everywhere||n===r.station||Math.abs(s[n]-s[r.station])<=Xx)}var al=i=>i.severity==="note"&&(i.from_s!==null||i.everywhere),as=i=>i.contour===null||i.station===null?[]:[{contour:i.contour,station:i.station,from_s:i.from_s,to_s:i.to_s},...i.places];function zo(i,t){let{from_s:e,to_s:n}=i;return e===null||n===null?!1:e<=n?t>=e-1e-6&&t<=n+1e-6:t>=e-1e-6||t<=n+1e-6}function fu(i,t){let e=0,n=i.length-1;for(;e<n;){let s=e+n>>1;i[s]<t?e=s+1:n=s}return e>0&&t-i[e-1]<i[e]-t?e-1:e}var Ls=132,ll=24,cl=class{constructor(t,e,n,s,r){this.judged=t;this.within=e;this.further=n;this.atlas=s;this.walk=r}judged;within;further;atlas;walk;charts=[];shownJoint=-1;build(){this.shownJoint=this.walk.place.joint;for(let a of this.charts)a.remove();en(this.judged),en(this.within),en(this.further),this.charts=[];let t=[...new Set(this.walk.facts.bands.flatMap(a=>a.columns))].filter(a=>this.isThere(a)),e=new Set(this.atlas.payload.findings.filter(a=>a.joint===this.walk.joint.id).map(a=>a.rule)),n=t.filter(a=>this.walk.facts.bands.some(l=>e.has(l.rule)&&l.columns.includes(a))),s=Object.keys(this.atlas.payload.quantities).filter(a=>!t.includes(a)&&this.isThere(a)),r=this.ranges([...t,...s]);this.judged.classList.toggle("small-multiples",n.length>2);for(let[a,l]of[[this.judged,n],[this.within,t.filter(c=>!n.includes(c))],[this.further,s]])for(let c of l){let u=new pu(c,this.atlas,this.walk,r.get(this.scale(c)));this.charts.push(u),a.append(u.root),u.later()}let o=this.within.closest("details");o&&(o.hidden=n.length===t.length),t.length&&!n.length&&this.judged.append(qt("p",null,gt("Every judged quantity is within its limits everywhere."))),t.length||this.judged.append(qt("p",null,gt("No judged quantity was measured along this seam.")))}scale(t){return this.atlas.payload.quantities[t]?.scale??t}ranges(t){let e=new Map;for(let n of t){let s=$x(n,this.walk),r=this.scale(n),o=e.get(r)??s;e.set(r,[Math.min(s[0],o[0]),Math.max(s[1],o[1])])}return e}isThere(t){return this.walk.joint.contours.some(e=>e.stations[t]?.some(n=>n!==null))}show(t){t.joint!==this.shownJoint&&this.build();for(let e of this.charts)e.show()}retheme(){for(let t of this.charts)t.redraw()}forPrint(t){for(let e of this.charts)this.further.contains(e.root)||e.forPrint(t)}forScreen(){for(let t of this.charts)t.forScreen()}},pu=class{constructor(t,e,n,s){this.column=t;this.atlas=e;this.walk=n;this.range=s;let r=n.facts.bands.filter(d=>d.columns.includes(t));this.edges=Qp(t,n);let o=new Set(r.map(d=>d.rule));this.findings=e.payload.findings.filter(d=>d.joint===n.joint.id&&(d.quantity===t||o.has(d.rule)&&!r.some(f=>f.columns.length>1)));let a=e.words,l=a.title(t),c=n.facts.tolerances[t],u=r.filter(d=>d.words).map(d=>`${d.title.toLowerCase()}: ${d.words}`),h=a.unit(t);this.root=qt("figure",{class:"chart","data-column":t},qt("figcaption",null,qt("span",{class:"chart-title"},l,h?` / ${h}`:""),this.here,qt("span",{class:"chart-limits"},[...u,...c?[gt("tolerance ±{value}",{value:a.value(c,t)})]:[]].join(" · "))),qt("div",{class:"chart-row"},this.plotHost,this.spread),this.summary())}column;atlas;walk;range;root;plotHost=qt("div",{class:"chart-plot"});spread=qt("div",{class:"chart-spread"});here=qt("b",{class:"chart-here"});cursor=qt("div",{class:"chart-cursor","aria-hidden":!0});plot=null;drawNow=()=>{};edges;findings;summary(){let t=this.walk.joint.contours.map(n=>{let s=n.summary[this.column],r=this.atlas.words,o=this.walk.joint.contours.length>1?`${n.id}: `:"";if(!s)return`${o}${gt("not measured")}`;let a=(l,c)=>c==null?"":`, ${l} ${r.value(c,this.column)}`;return`${o}${gt("least")} ${r.value(s.min,this.column)}${a("p05",s.p05)}, ${gt("median")} ${r.value(s.median,this.column)}${a("p95",s.p95)}, ${gt("most")} ${r.value(s.max,this.column)}`}),e=this.walk.joint.summary[this.column]?.outside;return e!==void 0&&t.push(gt("outside a limit: {share} % of the length",{share:_i(100*e,e>0&&e<.1?1:0)})),qt("p",{class:"chart-summary"},t.join(" · "))}later(){this.drawNow=Io(this.root,()=>this.draw())}data(){let t=[],e=[],{stretches:n}=this.walk.stretches();for(let{contour:s,start:r}of n){let o=this.walk.joint.contours[s],a=o.stations[this.column];t.length&&(t.push(r-.001),e.push(null)),o.stations.s.forEach((l,c)=>{t.push(r+l),e.push(a?.[c]??null)}),o.closed&&a&&(t.push(r+o.length_mm),e.push(a[0]))}return[t,e]}line(t,e){let{left:n,width:s}=t.bbox;if(e===null)return[];if(typeof e=="number"){let a=t.valToPos(e,"y",!0);return[[n,a],[n+s,a]]}let r=[],{stretches:o}=this.walk.stretches();for(let{contour:a,start:l}of o){let c=this.walk.joint.contours[a];e[c.id]?.forEach((u,h)=>{u!==null&&r.push([t.valToPos(l+c.stations.s[h],"x",!0),t.valToPos(u,"y",!0)])})}return r}draw(){let t=this.data(),[e,n]=this.range,s=Math.max(200,this.plotHost.getBoundingClientRect().width||600),r=this.atlas.payload.quantities[this.column]?.decimals??3,o=this.atlas.payload.quantities[this.column]?.unit??"",a={width:s,height:Ls,pxAlign:0,legend:{show:!1},cursor:{sync:{key:"seam"},drag:{x:!0,y:!1,setScale:!0},points:{show:!1},y:!1},scales:{x:{time:!1,range:(l,c,u)=>[c,u]},y:{range:()=>[e,n]}},padding:[8,14,0,0],axes:[{stroke:()=>rn("soft"),grid:{show:!1},ticks:{stroke:()=>rn("line"),size:4},size:22,font:Kp,gap:3,values:(l,c)=>Jp(c.map(u=>u/Ei()),2)},{stroke:()=>rn("soft"),grid:{stroke:()=>rn("line"),width:1},ticks:{show:!1},size:52,font:Kp,space:26,values:(l,c)=>Jp(c.map(u=>ss(u,o,0)[0]),ss(0,o,r)[2])}],series:[{},{stroke:()=>rn("ink"),width:1.6,points:{show:!1},spanGaps:!1}],hooks:{drawAxes:[l=>{this.drawBands(l),this.drawTolerance(l,t)}],draw:[l=>{this.drawFindings(l),this.show()}],ready:[l=>this.listen(l)]}};this.plot=new An(a,t,this.plotHost),this.plot.over.append(this.cursor),this.drawSpread(t[1],e,n),this.show(),new ResizeObserver(()=>{let l=this.plotHost.getBoundingClientRect().width;this.plot&&l>50&&Math.abs(l-this.plot.width)>1&&!this.printing&&this.plot.setSize({width:l,height:Ls})}).observe(this.plotHost)}printing=!1;listen(t){let e=0;t.over.addEventListener("mousedown",n=>{e=n.clientX}),t.over.addEventListener("click",n=>{if(Math.abs(n.clientX-e)>4)return;let s=t.posToVal(n.clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")}),t.over.addEventListener("touchmove",n=>{let s=t.posToVal(n.touches[0].clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")},{passive:!0})}drawBands(t){let{ctx:e}=t,{left:n,top:s,width:r,height:o}=t.bbox;e.save(),e.beginPath(),e.rect(n,s,r,o),e.clip();for(let a of this.edges)for(let[l,c]of[[a.low,!0],[a.high,!1]]){let u=this.line(t,l);if(u.length<2)continue;let h=c?s+o:s;e.save(),e.beginPath(),u.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.lineTo(u[u.length-1][0],h),e.lineTo(u[0][0],h),e.closePath(),e.clip(),e.globalAlpha=.5,e.fillStyle=rn("outside"),e.fillRect(n,s,r,o),e.globalAlpha=.55,e.strokeStyle=rn("outside-line"),e.lineWidth=devicePixelRatio*.7,e.beginPath();let d=7*devicePixelRatio;for(let f=n-o;f<n+r;f+=d)e.moveTo(f,s+o),e.lineTo(f+o,s);e.stroke(),e.restore(),e.strokeStyle=rn("limit"),e.lineWidth=1.3*devicePixelRatio,e.setLineDash([6*devicePixelRatio,3*devicePixelRatio]),e.beginPath(),u.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.stroke(),e.setLineDash([])}e.restore()}drawTolerance(t,[e,n]){let{tolerances:s}=this.walk.facts,r=s[this.column]??this.edges.map(a=>s[a.column]).find(a=>a!==void 0);if(!r)return;let{ctx:o}=t;o.save(),o.beginPath(),o.rect(t.bbox.left,t.bbox.top,t.bbox.width,t.bbox.height),o.clip(),o.globalAlpha=.22,o.fillStyle=rn("walker");for(let a=0;a<e.length;a++){if(n[a]===null)continue;let l=a;for(;l+1<e.length&&n[l+1]!==null;)l++;o.beginPath();for(let c=a;c<=l;c++)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]+r,"y",!0));for(let c=l;c>=a;c--)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]-r,"y",!0));o.closePath(),o.fill(),a=l}o.restore()}drawFindings(t){let{ctx:e}=t,{top:n,height:s}=t.bbox,{stretches:r}=this.walk.stretches(),o=devicePixelRatio;e.save(),e.font=`600 ${11*o}px ${em}`;let a=[];for(let l of this.findings)if(l.severity!=="note")for(let[c,u]of as(l).flatMap(h=>this.unrolled(h,r))){let h=t.valToPos(c,"x",!0),d=Math.max(t.valToPos(u,"x",!0),h+3*o);if(d<t.bbox.left||h>t.bbox.left+t.bbox.width)continue;e.fillStyle=rn(l.waived?"waived":l.severity==="must-fix"?"broken":"near"),e.fillRect(h,n+s-4*o,d-h,4*o);let f=(h+d)/2,g=a.find(_=>Math.abs(_.x-f)<14*o);g?g.findings.push(l):a.push({x:f,findings:[l],colour:String(e.fillStyle)})}e.textAlign="center";for(let{x:l,findings:c,colour:u}of a)e.fillStyle=u,e.fillText(Cs(c),l,n+11*o);e.restore()}unrolled({contour:t,from_s:e,to_s:n},s){let r=this.walk.joint.contours.findIndex(l=>l.id===t);if(r<0)return[];let{start:o,length:a}=s[r];return e===null||n===null?[]:e<=n?[[o+e,o+n]]:[[o+e,o+a],[o,o+n]]}drawSpread(t,e,n){en(this.spread);let s=new Array(ll).fill(0);for(let c of t)c!==null&&s[Math.min(ll-1,Math.max(0,Math.floor((c-e)/(n-e)*ll)))]++;let r=Math.max(1,...s),o=Ls-30,a=o/ll,l=ut("svg",{viewBox:`0 0 74 ${Ls}`,width:74,height:Ls,role:"img","aria-label":gt("Distribution of the values")});s.forEach((c,u)=>{c&&l.append(ut("rect",{class:"bin",x:4,y:q(8+o-(u+1)*a),width:q(Math.max(2,60*Math.sqrt(c/r))),height:q(a-.7)}))});for(let c of this.edges)for(let u of[c.low,c.high]){if(typeof u!="number"||u<e||u>n)continue;let h=8+o*(1-(u-e)/(n-e));l.append(ut("line",{class:"bin-limit",x1:0,x2:74,y1:q(h),y2:q(h)}))}l.append(ut("text",{class:"side",x:4,y:Ls-8},gt("spread √n"))),this.spread.append(l)}show(){let{contour:t,place:e}=this.walk,n=t.stations[this.column]?.[e.station]??null;if(this.here.textContent=this.atlas.words.value(n,this.column),this.here.dataset.value=String(n),!this.plot)return;let s=this.plot.valToPos(this.walk.unrolled,"x"),r=s>=-1&&s<=this.plot.bbox.width/An.pxRatio+1;this.cursor.hidden=!r,this.cursor.style.transform=`translateX(${q(s)}px)`,this.cursor.dataset.s=this.walk.unrolled.toFixed(4)}redraw(){this.plot?.redraw(!1,!0)}forPrint(t){this.drawNow(),this.printing=!0,this.plot?.setSize({width:t,height:Ls})}forScreen(){this.printing&&(this.printing=!1,this.plot?.setSize({width:Math.max(200,this.plotHost.getBoundingClientRect().width),height:Ls}))}remove(){this.plot?.destroy()}},Qp=(i,t)=>t.facts.bands.filter(e=>e.columns.includes(i)).flatMap(e=>e.edges).filter(e=>e.judged===i);function $x(i,t){let e=Qp(i,t),n=1/0,s=-1/0;for(let l of t.joint.contours)for(let c of l.stations[i]??[])c!==null&&(n=Math.min(n,c),s=Math.max(s,c));for(let l of e){let c=Yx(l.low),u=jp(l.high);c!==null&&(n=Math.min(n,c),s=Math.max(s,c)),u!==null&&u-s<2*Math.max(s-n,Math.abs(s)*.3)&&(s=Math.max(s,u),n=Math.min(n,u))}let r=e.map(l=>jp(l.low)).filter(l=>l!==null&&l>0);r.length&&e.every(l=>l.high===null)&&(s=Math.min(s,Math.max(12*Math.max(...r),2*n)));let o=t.facts.tolerances[i]??0;n-=o,s+=o;let a=Math.max((s-n)*.12,Math.abs(s)*.02,.01);return[n-a,s+a]}function Jp(i,t){let e=qx(i,t),n=i.map(s=>(Math.abs(s)<.5*10**-e?0:s).toFixed(e));return n.map((s,r)=>i.some((o,a)=>n[a]===s&&Math.abs(o-Number(s))<Math.abs(i[r]-Number(s))-1e-12)?"":_i(Number(s),e))}function qx(i,t){for(let e=0;e<t;e++)if(i.every(n=>Math.abs(Number(n.toFixed(e))-n)<1e-9))return e;return t}var tm=i=>i===null?[]:typeof i=="number"?[i]:Object.values(i).flat().filter(t=>t!==null),Yx=i=>tm(i).reduce((t,e)=>t===null||e<t?e:t,null),jp=i=>tm(i).reduce((t,e)=>t===null||e>t?e:t,null),em='"Barlow Semi Condensed", "Arial Narrow", sans-serif',Kp=`500 12px ${em}`;var hl=(i,t)=>i[0]*t[0]+i[1]*t[1]+i[2]*t[2],Zx=(i,t)=>[i[1]*t[2]-i[2]*t[1],i[2]*t[0]-i[0]*t[2],i[0]*t[1]-i[1]*t[0]],nm=i=>{let t=Math.hypot(...i);return[i[0]/t,i[1]/t,i[2]/t]};function or(i){let t=nm([-i[0],-i[1],-i[2]]),e=[[1,0,0],[0,1,0],[0,0,1]],n=e.find(o=>Math.abs(hl(o,t))<.8)??e[1],s=hl(n,t),r=nm([n[0]-s*t[0],n[1]-s*t[1],n[2]-s*t[2]]);return{right:r,up:Zx(t,r),toward:t}}var Hr=(i,t)=>[hl(i.right,t),hl(i.up,t)];function im(i,t,e,n,s,r,o){let a=new Float32Array(e*n).fill(-1/0),l=new Int32Array(e*n).fill(-1),c=new Float32Array(e*n*3),{right:u,up:h,toward:d}=t,f=0;for(let g of i){let{positions:_,triangles:p}=g,m=_.length/3,y=new Float32Array(m),E=new Float32Array(m),b=new Float32Array(m);for(let C=0;C<m;C++){let[w,x,S]=[_[3*C],_[3*C+1],_[3*C+2]];y[C]=(u[0]*w+u[1]*x+u[2]*S-r)*s,E[C]=(o-(h[0]*w+h[1]*x+h[2]*S))*s,b[C]=d[0]*w+d[1]*x+d[2]*S}for(let C=0;C<p.length;C+=3){let[w,x,S]=[p[C],p[C+1],p[C+2]],z=(y[x]-y[w])*(E[S]-E[w])-(E[x]-E[w])*(y[S]-y[w]);if(Math.abs(z)<1e-9)continue;let I=-((b[x]-b[w])*(E[S]-E[w])-(b[S]-b[w])*(E[x]-E[w]))/z,R=-((b[S]-b[w])*(y[x]-y[w])-(b[x]-b[w])*(y[S]-y[w]))/z,U=Math.max(0,Math.ceil(Math.min(y[w],y[x],y[S])-.5)),V=Math.min(e-1,Math.floor(Math.max(y[w],y[x],y[S])-.5)),P=Math.max(0,Math.ceil(Math.min(E[w],E[x],E[S])-.5)),F=Math.min(n-1,Math.floor(Math.max(E[w],E[x],E[S])-.5)),H=Math.hypot(I/s,R/s,1/s/s)||1,O=[I*s,-R*s,1],st=Math.hypot(O[0],O[1],O[2])||H,Z=f+(g.face.length?g.face[C/3]:0);for(let j=P;j<=F;j++)for(let tt=U;tt<=V;tt++){let ct=((tt+.5-y[w])*(E[S]-E[w])-(j+.5-E[w])*(y[S]-y[w]))/z,at=((j+.5-E[w])*(y[x]-y[w])-(tt+.5-y[w])*(E[x]-E[w]))/z;if(ct<-1e-6||at<-1e-6||ct+at>1+1e-6)continue;let $=b[w]+ct*(b[x]-b[w])+at*(b[S]-b[w]),dt=j*e+tt;$<=a[dt]||(a[dt]=$,l[dt]=Z,c[3*dt]=O[0]/st,c[3*dt+1]=O[1]/st,c[3*dt+2]=O[2]/st)}}f+=1e6}return{width:e,height:n,depth:a,face:l,normal:c}}function sm(i,t,e,n,s,r){let{width:o,height:a,depth:l,face:c,normal:u}=t,h=i.data,d=(p,m,y)=>{for(let E=0;E<3;E++)h[4*p+E]+=(m[E]-h[4*p+E])*y},[f,g]=[1/0,-1/0];for(let p of l)p>-1/0&&(p<f&&(f=p),p>g&&(g=p));let _=Math.max(1e-6,g-f);for(let p=0;p<o*a;p++){if(c[p]<0)continue;let m=-.5*u[3*p]+.5*u[3*p+1],y=.12*(1-(l[p]-f)/_)+Math.max(0,-m)*.3+(1-u[3*p+2])*.1;d(p,e,s),d(p,n,Math.min(.5,y)*s)}for(let p=0;p<a-1;p++)for(let m=0;m<o-1;m++){let y=p*o+m,E=0;for(let b of[y+1,y+o]){if(c[y]===c[b])continue;if(c[y]<0||c[b]<0){E=1;continue}u[3*y]*u[3*b]+u[3*y+1]*u[3*b+1]+u[3*y+2]*u[3*b+2]<.97&&(E=Math.max(E,.6)),Math.abs(l[y]-l[b])>.15&&(E=Math.max(E,.85))}E&&d(y,n,E*r)}}var Vo=["unknown","within","near","broken","waived","look","noted"];var dl=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;en(t),t.append(this.canvas,this.overlay),new ResizeObserver(()=>this.draw()).observe(t);let s=r=>{let o=this.overlay.getBoundingClientRect();this.pick((r.clientX-o.left)*(this.view.width/o.width),(r.clientY-o.top)*(this.view.height/o.height))};this.overlay.addEventListener("pointerdown",r=>{this.view&&(this.overlay.setPointerCapture(r.pointerId),s(r))}),this.overlay.addEventListener("pointermove",r=>{this.view&&r.buttons&&s(r)})}host;atlas;walk;canvas=qt("canvas",{"aria-hidden":!0});overlay=ut("svg",{role:"group"});cursor=ut("g",{class:"plan-cursor"});view=null;shownJoint=-1;draw(t){let e=t??this.host.getBoundingClientRect();if(e.width<40||e.height<40)return;let n=or(this.walk.joint.beam),[s,r,o,a]=[1/0,-1/0,1/0,-1/0],l=(g,_)=>{s=Math.min(s,g),r=Math.max(r,g),o=Math.min(o,_),a=Math.max(a,_)};for(let g of this.walk.joint.contours)Kn(g).forEach(_=>l(...Hr(n,_)));let c=new Set([...this.walk.joint.cover,...this.walk.joint.base]),u=this.atlas.meshes.filter(g=>c.has(g.part));for(let g of u)for(let _=0;_<g.positions.length;_+=3)l(...Hr(n,[g.positions[_],g.positions[_+1],g.positions[_+2]]));let h=t?34:40,d=Math.min((e.width-2*h)/Math.max(1e-6,r-s),(e.height-2*h)/Math.max(1e-6,a-o)),f={scale:d,width:e.width,height:e.height,plane:n,x:(s+r)/2-e.width/2/d,y:(o+a)/2+e.height/2/d};this.view=f,this.shownJoint=this.walk.place.joint,this.paintRelief(u,f),this.drawSeam(f),this.show(this.walk.place)}paintRelief(t,e){let n=Math.min(2,Math.max(1,devicePixelRatio)),[s,r]=[Math.round(e.width*n),Math.round(e.height*n)];this.canvas.width=s,this.canvas.height=r;let o=this.canvas.getContext("2d");if(!o||!t.length)return;let a=h=>Jx(rn(h)),l=o.createImageData(s,r),c=a("sheet");for(let h=0;h<s*r;h++)l.data.set([...c,255],4*h);let u=new Set(this.walk.joint.cover);for(let h of[!1,!0]){let d=t.filter(g=>u.has(g.part)===h);if(!d.length)continue;let f=im(d,e.plane,s,r,e.scale*n,e.x,e.y);sm(l,f,a(h?"cover-fill":"base-fill"),a("ink"),h?.6:.9,h?.55:.25)}o.putImageData(l,0,0)}at(t){let[e,n]=Hr(this.view.plane,t);return[(e-this.view.x)*this.view.scale,(this.view.y-n)*this.view.scale]}drawSeam(t){en(this.overlay),this.overlay.setAttribute("viewBox",`0 0 ${q(t.width)} ${q(t.height)}`),this.overlay.setAttribute("aria-label",gt("The seam seen along the beam, with the findings as numbered section marks"));let e=this.walk.facts;for(let n of this.walk.joint.contours){let s=Kn(n).map(r=>this.at(r));this.overlay.append(ut("path",{class:"seam casing",d:Go(s,n.closed)}));for(let[r,o,a]of e.worst[n.id]??[]){let l=o+1<s.length?o+1:o,c=s.slice(r,l+1);n.closed&&o===s.length-1&&c.push(s[0]),this.overlay.append(ut("path",{class:`seam ${Vo[a]}`,d:Go(c,!1)})),a===3&&this.overlay.append(ut("path",{class:"seam broken-core",d:Go(c,!1)}))}}this.drawStarts(),this.drawPlaces(),this.drawMarks(),this.drawAxes(t),this.overlay.append(this.cursor)}drawStarts(){for(let t of this.walk.joint.contours){let e=Kn(t).map(p=>this.at(p));if(e.length<3)continue;let[n,s]=e[0],[r,o]=this.normal(t,0),a=e.find(([p,m])=>Math.hypot(p-n,m-s)>6)??e[1],l=Math.hypot(a[0]-n,a[1]-s)||1,[c,u]=[(a[0]-n)/l,(a[1]-s)/l],[h,d]=[n-r*13,s-o*13],[f,g]=[h+c*20,d+u*20],_=this.walk.joint.contours.length>1?`${t.id}: s = 0`:"s = 0";this.overlay.append(ut("g",{class:"start-mark","data-start":t.id},ut("path",{d:`M${q(n+r*7)} ${q(s+o*7)}L${q(n-r*13)} ${q(s-o*13)}L${q(f)} ${q(g)}`}),ut("path",{class:"cut-arrow",d:om(f,g,c,u)}),ut("text",{x:q(n-r*24),y:q(s-o*24),"text-anchor":Math.abs(r)<.5?"middle":r>0?"end":"start","dominant-baseline":"central"},_)))}}drawMarks(){let t=[];for(let s of this.atlas.payload.findings)if(!(s.joint!==this.walk.joint.id||s.station===null||al(s)))for(let r of as(s)){let o=this.walk.joint.contours.find(d=>d.id===r.contour);if(!o)continue;let[a,l]=this.at(Kn(o)[r.station]),[c,u]=this.normal(o,r.station),h=t.find(d=>Math.hypot(d.x-a,d.y-l)<18);h?h.findings.includes(s)||h.findings.push(s):t.push({x:a,y:l,nx:c,ny:u,findings:[s],spot:r})}let e=t.length>8?Ha:Cs,n=s=>e(s.findings).length*4+2;for(let s=0;s<t.length;s++)for(let r=s+1;r<t.length;r++){let[o,a]=[t[s],t[r]],[l,c]=[Math.abs(o.x+o.nx*31-a.x-a.nx*31),Math.abs(o.y+o.ny*31-a.y-a.ny*31)];l>n(o)+n(a)||c>17||(o.findings=[...new Set([...o.findings,...a.findings])].sort((u,h)=>u.n-h.n),t.splice(r,1),r=s)}for(let{x:s,y:r,nx:o,ny:a,findings:l,spot:c}of t){let u=l[0],h=u.waived?"waived":u.severity,d=ut("g",{class:`section-mark ${h}`,tabindex:0,role:"button","data-finding":u.n,"aria-label":`${gt("Finding")} ${l.map(p=>p.n).join(", ")}: ${u.title}`});for(let p of[1,-1]){let[m,y]=[s+p*o*8,r+p*a*8],[E,b]=[s+p*o*19,r+p*a*19];d.append(ut("path",{class:"cut",d:`M${q(m)} ${q(y)}L${q(E)} ${q(b)}`}),ut("path",{class:"cut-arrow",d:om(E,b,-a,o)}))}let[f,g]=[s+o*31,r+a*31];d.append(ut("circle",{class:"target",cx:q(s),cy:q(r),r:13}),ut("text",{x:q(f),y:q(g),"text-anchor":"middle","dominant-baseline":"central"},e(l)));let _=p=>{p.stopPropagation(),this.walk.showFinding(u,"finding",c)};d.addEventListener("click",_),d.addEventListener("pointerdown",p=>p.stopPropagation()),d.addEventListener("keydown",p=>{(p.key==="Enter"||p.key===" ")&&(p.preventDefault(),_(p))}),this.overlay.append(d)}}drawPlaces(){for(let t of this.atlas.payload.findings){let e=this.walk.joint.contours.find(l=>l.id===t.contour);if(t.joint!==this.walk.joint.id||!t.at||!e||t.station===null||t.from_s!==null&&!t.met)continue;let[n,s]=this.at(t.at),[r,o]=this.at(Kn(e)[t.station]),a=ut("g",{class:`place-mark ${t.waived?"waived":t.severity}`,"data-place-of":t.n},ut("title",null,`${gt("Finding")} ${t.n}: ${t.title}${t.value==="–"?"":`, ${t.value}`}`),ut("path",{d:`M${q(n-5)} ${q(s-5)}L${q(n+5)} ${q(s+5)}M${q(n-5)} ${q(s+5)}L${q(n+5)} ${q(s-5)}`}));Math.hypot(n-r,s-o)>4&&a.append(ut("path",{class:"reach",d:`M${q(r)} ${q(o)}L${q(n)} ${q(s)}`})),this.overlay.append(a)}}normal(t,e){let[n,s]=Hr(this.view.plane,t.stations.u[e]),r=Math.hypot(n,s)||1;return[n/r,-s/r]}drawAxes(t){let e=[26,t.height-26],n=ut("g",{class:"axes","aria-hidden":!0});["X","Y","Z"].forEach((s,r)=>{let o=[0,0,0];o[r]=1;let[a,l]=Hr(t.plane,o);if(Math.hypot(a,l)<.3)return;let c=[e[0]+a*20,e[1]-l*20];n.append(ut("path",{d:`M${q(e[0])} ${q(e[1])}L${q(c[0])} ${q(c[1])}`}),ut("text",{x:q(c[0]+a*7),y:q(c[1]-l*7),"text-anchor":"middle","dominant-baseline":"central"},s))}),this.overlay.append(n)}show(t){if(!this.view)return;if(t.joint!==this.shownJoint){this.draw();return}let e=this.walk.contour,[n,s]=this.at(Kn(e)[t.station]),[r,o]=this.normal(e,t.station);en(this.cursor),this.cursor.append(...[1,-1].flatMap(a=>["casing",""].map(l=>ut("path",{class:l,d:`M${q(n+a*r*6)} ${q(s+a*o*6)}L${q(n+a*r*17)} ${q(s+a*o*17)}`})))),this.lens(t),this.cursor.setAttribute("data-x",q(n)),this.cursor.setAttribute("data-y",q(s))}lens(t){let e=this.view,{joint:n,contour:s,facts:r}=this.walk,o=this.walk.findingsHere().find(R=>R.from_s!==null&&R.severity!=="note");if(!o)return;let{s:a}=s.stations,l=Kn(s).map(R=>this.at(R)),c=as(o).find(R=>R.contour===s.id&&zo(R,a[t.station]))??o,u=a.flatMap((R,U)=>zo(c,R)?[U]:[]),h=u.map(R=>l[R]),d=Math.max(...h.map(R=>Math.hypot(R[0]-h[0][0],R[1]-h[0][1])));if(!u.length||d>26)return;let f=Math.max(30,Math.min(58,Math.min(e.width,e.height)*.15)),[g,_]=l[t.station],p=n.contours.flatMap(R=>Kn(R).map(U=>this.at(U))),m=(R,U)=>Math.min(...p.map(V=>Math.hypot(V[0]-R,V[1]-U)),R,U,e.width-R,e.height-U)-f,y=[];for(let R=1;R<8;R++)for(let U=1;U<8;U++)y.push([e.width*R/8,e.height*U/8]);let E=y.filter(([R,U])=>m(R,U)>4);if(!E.length)return;let[b,C]=E.reduce((R,U)=>Math.hypot(R[0]-g,R[1]-_)<=Math.hypot(U[0]-g,U[1]-_)?R:U),w=Math.max(2,Math.min(8,f*.9/Math.max(d,4))),x=R=>[b+(R[0]-g)*w,C+(R[1]-_)*w],S=Math.hypot(b-g,C-_),z=ut("g",{class:"plan-lens","data-finding":o.n},ut("path",{class:"tie",d:`M${q(g)} ${q(_)}L${q(b-(b-g)/S*f)} ${q(C-(C-_)/S*f)}`}),ut("circle",{class:"rim",cx:q(b),cy:q(C),r:q(f)})),I=ut("g",{"clip-path":"url(#plan-lens-rim)"});z.append(ut("clipPath",{id:"plan-lens-rim"},ut("circle",{cx:q(b),cy:q(C),r:q(f-1)})),I);for(let[R,U,V]of r.worst[s.id]??[]){let P=l.slice(R,(U+1<l.length?U+1:U)+1);s.closed&&U===l.length-1&&P.push(l[0]),I.append(ut("path",{class:`seam ${Vo[V]}`,d:Go(P.map(x),!1)})),V===3&&I.append(ut("path",{class:"seam broken-core",d:Go(P.map(x),!1)}))}z.append(ut("text",{x:q(b),y:q(C+f+13),"text-anchor":"middle"},gt("{count} times larger",{count:Math.round(w)}))),this.cursor.append(z)}pick(t,e){let n={contour:0,station:0},s=1/0;this.walk.joint.contours.forEach((r,o)=>Kn(r).forEach((a,l)=>{let[c,u]=this.at(a),h=Math.hypot(c-t,u-e);h<s&&(s=h,n={contour:o,station:l})})),this.walk.go(n,"plan")}},rm=new WeakMap;function Kn(i){let t=rm.get(i);if(!t){let{x:e,y:n,z:s}=i.stations;t=e.map((r,o)=>[e[o],n[o],s[o]]),rm.set(i,t)}return t}function Go(i,t){return"M"+i.map(([e,n])=>`${q(e)} ${q(n)}`).join("L")+(t?"Z":"")}function om(i,t,e,n){return`M${q(i+e*9)} ${q(t+n*9)}L${q(i-n*3.4)} ${q(t+e*3.4)}L${q(i+n*3.4)} ${q(t-e*3.4)}Z`}function Jx(i){let t=i.replace("#",""),e=Number.parseInt(t.length===3?[...t].map(n=>n+n).join(""):t,16);return[e>>16&255,e>>8&255,e&255]}var gu=class{isDrawn=!1;packed;sections=new Map;bare=new Map;constructor(t){this.packed=t.as_drawn?.sections??[]}shown(t,e){if(!this.isDrawn)return e;let n=`${t}/${e.contour.id}`;if(!this.sections.has(n)){let s=this.packed.find(r=>r.joint===t&&r.contour===e.contour.id);this.sections.set(n,s?new Ir(s):null)}return this.bare.has(e.contour)||this.bare.set(e.contour,jx(e.contour)),{facts:{...e.facts,drop:null},contour:this.bare.get(e.contour),sections:this.sections.get(n),findings:[]}}wire(t){let e=fe("proposed-switch");if(!e||!this.packed.length)return;e.hidden=!1;let n=[[gt("as proposed"),!1],[gt("as drawn"),!0]],s=n.map(([r,o])=>{let a=qt("button",{type:"button","aria-pressed":String(!o)},r);return a.addEventListener("click",()=>{this.isDrawn=o,s.forEach((l,c)=>l.setAttribute("aria-pressed",String(n[c][1]===o))),t()}),a});e.append(...s)}};function jx(i){let{s:t,x:e,y:n,z:s,u:r}=i.stations,o=t.map(()=>null),a=Object.keys(i.stations).filter(c=>!["s","x","y","z","u"].includes(c)),l={s:t,x:e,y:n,z:s,u:r};for(let c of a)l[c]=o;return{...i,stations:l}}var fl=i=>(mu.has(i)||mu.set(i,new gu(i.payload)),mu.get(i)),mu=new WeakMap;var Xs={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},$s={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Um=0,Xu=1,Fm=2;var va=1,Om=2,mo=3,Ni=0,Dn=1,jn=2,pr=0,go=1,$u=2,qu=3,Yu=4,Bm=5;var mr=100,km=101,zm=102,Vm=103,Gm=104,Hm=200,Wm=201,Xm=202,$m=203,Zu=204,Ju=205,qm=206,Ym=207,Zm=208,Jm=209,jm=210,Km=211,Qm=212,tg=213,eg=214,Bl=0,kl=1,zl=2,so=3,Vl=4,Gl=5,Hl=6,Wl=7,gc=0,ng=1,ig=2,Ji=0,ju=1,Ku=2,Qu=3,td=4,ed=5,nd=6,id=7;var sd=300,gr=301,_o=302,_c=303,xc=304,Xl=1e3,Yi=1001,$l=1002,Cn=1003,sg=1004;var ba=1005;var Jn=1006,yc=1007;var ys=1008;var ti=1009,rd=1010,od=1011,xo=1012,vc=1013,Ui=1014,Fi=1015,Oi=1016,bc=1017,Mc=1018,_r=1020,ad=35902,ld=35899,cd=1021,hd=1022,Bi=1023,ps=1026,vs=1027,ud=1028,Sc=1029,qs=1030,wc=1031;var Ec=1033,Ma=33776,Sa=33777,wa=33778,Ea=33779,Tc=35840,Ac=35841,Rc=35842,Cc=35843,Pc=36196,Ic=37492,Lc=37496,Dc=37488,Nc=37489,Ta=37490,Uc=37491,Fc=37808,Oc=37809,Bc=37810,kc=37811,zc=37812,Vc=37813,Gc=37814,Hc=37815,Wc=37816,Xc=37817,$c=37818,qc=37819,Yc=37820,Zc=37821,Jc=36492,jc=36494,Kc=36495,Qc=36283,th=36284,Aa=36285,eh=36286;var jo=2300,ql=2301,Fl=2302,Bu=2303,ku=2400,zu=2401,Vu=2402;var rg=3200;var nh=0,og=1,bs="",ui="srgb",Ko="srgb-linear",Qo="linear",Ie="srgb";var Ol=7680;var ag=519,lg=512,cg=513,hg=514,dd=515,ug=516,dg=517,fd=518,pd=519,fg=35044;var md="300 es",bi=2e3,ro=2001;function Kx(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function Qx(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function ta(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function pg(){let i=ta("canvas");return i.style.display="block",i}var am={},oo=null;function gd(...i){let t="THREE."+i.shift();oo?oo("log",t,...i):console.log(t,...i)}function mg(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Jt(...i){i=mg(i);let t="THREE."+i.shift();if(oo)oo("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function se(...i){i=mg(i);let t="THREE."+i.shift();if(oo)oo("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Yo(...i){let t=i.join(" ");t in am||(am[t]=!0,Jt(...i))}function gg(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var _g={[Bl]:Bl,[zl]:Hl,[Vl]:Vl,[so]:Gl,[kl]:kl,[Hl]:zl,[Wl]:Wl,[Gl]:so},Di=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Fn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],lm=1234567,Zo=Math.PI/180,ao=180/Math.PI;function yo(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Fn[i&255]+Fn[i>>8&255]+Fn[i>>16&255]+Fn[i>>24&255]+"-"+Fn[t&255]+Fn[t>>8&255]+"-"+Fn[t>>16&15|64]+Fn[t>>24&255]+"-"+Fn[e&63|128]+Fn[e>>8&255]+"-"+Fn[e>>16&255]+Fn[e>>24&255]+Fn[n&255]+Fn[n>>8&255]+Fn[n>>16&255]+Fn[n>>24&255]).toLowerCase()}function _e(i,t,e){return Math.max(t,Math.min(e,i))}function _d(i,t){return(i%t+t)%t}function ty(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function ey(i,t,e){return i!==t?(e-i)/(t-i):0}function Jo(i,t,e){return(1-e)*i+e*t}function ny(i,t,e,n){return Jo(i,t,1-Math.exp(-e*n))}function iy(i,t=1){return t-Math.abs(_d(i,t*2)-t)}function sy(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function ry(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function oy(i,t){return i+Math.floor(Math.random()*(t-i+1))}function ay(i,t){return i+Math.random()*(t-i)}function ly(i){return i*(.5-Math.random())}function cy(i){i!==void 0&&(lm=i);let t=lm+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function hy(i){return i*Zo}function uy(i){return i*ao}function dy(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function fy(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function xd(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function py(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),u=o((t+n)/2),h=r((t-n)/2),d=o((t-n)/2),f=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*u,l*h,l*d,a*c);break;case"YZY":i.set(l*d,a*u,l*h,a*c);break;case"ZXZ":i.set(l*h,l*d,a*u,a*c);break;case"XZX":i.set(a*u,l*g,l*f,a*c);break;case"YXY":i.set(l*f,a*u,l*g,a*c);break;case"ZYZ":i.set(l*g,l*f,a*u,a*c);break;default:Jt("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function yd(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function xg(i,t){if(t.constructor===Float32Array)return i;let e=yd(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function yg(i,t){if(t.constructor===Float32Array)return i;let e=yd(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var vd={DEG2RAD:Zo,RAD2DEG:ao,generateUUID:yo,clamp:_e,euclideanModulo:_d,mapLinear:ty,inverseLerp:ey,lerp:Jo,damp:ny,pingpong:iy,smoothstep:sy,smootherstep:ry,randInt:oy,randFloat:ay,randFloatSpread:ly,seededRandom:cy,degToRad:hy,radToDeg:uy,isPowerOfTwo:dy,ceilPowerOfTwo:fy,floorPowerOfTwo:xd,setQuaternionFromProperEuler:py,normalize:yg,denormalize:xg},re=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(_e(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},di=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],u=n[s+2],h=n[s+3],d=r[o+0],f=r[o+1],g=r[o+2],_=r[o+3];if(h!==_||l!==d||c!==f||u!==g){let p=l*d+c*f+u*g+h*_;p<0&&(d=-d,f=-f,g=-g,_=-_,p=-p);let m=1-a;if(p<.9995){let y=Math.acos(p),E=Math.sin(y);m=Math.sin(m*y)/E,a=Math.sin(a*y)/E,l=l*m+d*a,c=c*m+f*a,u=u*m+g*a,h=h*m+_*a}else{l=l*m+d*a,c=c*m+f*a,u=u*m+g*a,h=h*m+_*a;let y=1/Math.sqrt(l*l+c*c+u*u+h*h);l*=y,c*=y,u*=y,h*=y}}t[e]=l,t[e+1]=c,t[e+2]=u,t[e+3]=h}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],u=n[s+3],h=r[o],d=r[o+1],f=r[o+2],g=r[o+3];return t[e]=a*g+u*h+l*f-c*d,t[e+1]=l*g+u*d+c*h-a*f,t[e+2]=c*g+u*f+a*d-l*h,t[e+3]=u*g-a*h-l*d-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),u=a(s/2),h=a(r/2),d=l(n/2),f=l(s/2),g=l(r/2);switch(o){case"XYZ":this._x=d*u*h+c*f*g,this._y=c*f*h-d*u*g,this._z=c*u*g+d*f*h,this._w=c*u*h-d*f*g;break;case"YXZ":this._x=d*u*h+c*f*g,this._y=c*f*h-d*u*g,this._z=c*u*g-d*f*h,this._w=c*u*h+d*f*g;break;case"ZXY":this._x=d*u*h-c*f*g,this._y=c*f*h+d*u*g,this._z=c*u*g+d*f*h,this._w=c*u*h-d*f*g;break;case"ZYX":this._x=d*u*h-c*f*g,this._y=c*f*h+d*u*g,this._z=c*u*g-d*f*h,this._w=c*u*h+d*f*g;break;case"YZX":this._x=d*u*h+c*f*g,this._y=c*f*h+d*u*g,this._z=c*u*g-d*f*h,this._w=c*u*h-d*f*g;break;case"XZY":this._x=d*u*h-c*f*g,this._y=c*f*h-d*u*g,this._z=c*u*g+d*f*h,this._w=c*u*h+d*f*g;break;default:Jt("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],u=e[6],h=e[10],d=n+a+h;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(u-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>h){let f=2*Math.sqrt(1+n-a-h);this._w=(u-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>h){let f=2*Math.sqrt(1+a-n-h);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+u)/f}else{let f=2*Math.sqrt(1+h-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+u)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(_e(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,u=e._w;return this._x=n*u+o*a+s*c-r*l,this._y=s*u+o*l+r*a-n*c,this._z=r*u+o*c+n*l-s*a,this._w=o*u-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),u=Math.sin(c);l=Math.sin(l*c)/u,e=Math.sin(e*c)/u,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},X=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(cm.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(cm.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),u=2*(a*e-r*s),h=2*(r*n-o*e);return this.x=e+l*c+o*h-a*u,this.y=n+l*u+a*c-r*h,this.z=s+l*h+r*u-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this.z=_e(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this.z=_e(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return _u.copy(this).projectOnVector(t),this.sub(_u)}reflect(t){return this.sub(_u.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(_e(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},_u=new X,cm=new di,oe=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let u=this.elements;return u[0]=t,u[1]=s,u[2]=a,u[3]=e,u[4]=r,u[5]=l,u[6]=n,u[7]=o,u[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],u=n[4],h=n[7],d=n[2],f=n[5],g=n[8],_=s[0],p=s[3],m=s[6],y=s[1],E=s[4],b=s[7],C=s[2],w=s[5],x=s[8];return r[0]=o*_+a*y+l*C,r[3]=o*p+a*E+l*w,r[6]=o*m+a*b+l*x,r[1]=c*_+u*y+h*C,r[4]=c*p+u*E+h*w,r[7]=c*m+u*b+h*x,r[2]=d*_+f*y+g*C,r[5]=d*p+f*E+g*w,r[8]=d*m+f*b+g*x,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8];return e*o*u-e*a*c-n*r*u+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=u*o-a*c,d=a*l-u*r,f=c*r-o*l,g=e*h+n*d+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let _=1/g;return t[0]=h*_,t[1]=(s*c-u*n)*_,t[2]=(a*n-s*o)*_,t[3]=d*_,t[4]=(u*e-s*l)*_,t[5]=(s*r-a*e)*_,t[6]=f*_,t[7]=(n*l-c*e)*_,t[8]=(o*e-n*r)*_,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return Yo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(xu.makeScale(t,e)),this}rotate(t){return Yo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(xu.makeRotation(-t)),this}translate(t,e){return Yo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(xu.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},xu=new oe,hm=new oe().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),um=new oe().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function my(){let i={enabled:!0,workingColorSpace:Ko,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Ie&&(s.r=fs(s.r),s.g=fs(s.g),s.b=fs(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Ie&&(s.r=io(s.r),s.g=io(s.g),s.b=io(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===bs?Qo:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[Ko]:{primaries:t,whitePoint:n,transfer:Qo,toXYZ:hm,fromXYZ:um,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:ui},outputColorSpaceConfig:{drawingBufferColorSpace:ui}},[ui]:{primaries:t,whitePoint:n,transfer:Ie,toXYZ:hm,fromXYZ:um,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:ui}}}),i}var be=my();function fs(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function io(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Wr,Yl=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Wr===void 0&&(Wr=ta("canvas")),Wr.width=t.width,Wr.height=t.height;let s=Wr.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Wr}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=ta("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=fs(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(fs(e[n]/255)*255):e[n]=fs(e[n]);return{data:e,width:t.width,height:t.height}}else return Jt("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},gy=0,lo=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:gy++}),this.uuid=yo(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(yu(s[o].image)):r.push(yu(s[o]))}else r=yu(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function yu(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Yl.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Jt("Texture: Unable to serialize Texture."),{})}var _y=0,vu=new X,Qn=class i extends Di{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Yi,s=Yi,r=Jn,o=ys,a=Bi,l=ti,c=i.DEFAULT_ANISOTROPY,u=bs){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:_y++}),this.uuid=yo(),this.name="",this.source=new lo(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new re(0,0),this.repeat=new re(1,1),this.center=new re(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new oe,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(vu).x}get height(){return this.source.getSize(vu).y}get depth(){return this.source.getSize(vu).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){Jt(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Jt(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==sd)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Xl:t.x=t.x-Math.floor(t.x);break;case Yi:t.x=t.x<0?0:1;break;case $l:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Xl:t.y=t.y-Math.floor(t.y);break;case Yi:t.y=t.y<0?0:1;break;case $l:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Qn.DEFAULT_IMAGE=null;Qn.DEFAULT_MAPPING=sd;Qn.DEFAULT_ANISOTROPY=1;var Ye=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],u=l[4],h=l[8],d=l[1],f=l[5],g=l[9],_=l[2],p=l[6],m=l[10];if(Math.abs(u-d)<.01&&Math.abs(h-_)<.01&&Math.abs(g-p)<.01){if(Math.abs(u+d)<.1&&Math.abs(h+_)<.1&&Math.abs(g+p)<.1&&Math.abs(c+f+m-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let E=(c+1)/2,b=(f+1)/2,C=(m+1)/2,w=(u+d)/4,x=(h+_)/4,S=(g+p)/4;return E>b&&E>C?E<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(E),s=w/n,r=x/n):b>C?b<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),n=w/s,r=S/s):C<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(C),n=x/r,s=S/r),this.set(n,s,r,e),this}let y=Math.sqrt((p-g)*(p-g)+(h-_)*(h-_)+(d-u)*(d-u));return Math.abs(y)<.001&&(y=1),this.x=(p-g)/y,this.y=(h-_)/y,this.z=(d-u)/y,this.w=Math.acos((c+f+m-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this.z=_e(this.z,t.z,e.z),this.w=_e(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this.z=_e(this.z,t,e),this.w=_e(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Zl=class extends Di{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Jn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new Ye(0,0,t,e),this.scissorTest=!1,this.viewport=new Ye(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Qn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Jn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new lo(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},fi=class extends Zl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},ea=class extends Qn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Cn,this.minFilter=Cn,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Jl=class extends Qn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Cn,this.minFilter=Cn,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var $e=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,u,h,d,f,g,_,p){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,u,h,d,f,g,_,p)}set(t,e,n,s,r,o,a,l,c,u,h,d,f,g,_,p){let m=this.elements;return m[0]=t,m[4]=e,m[8]=n,m[12]=s,m[1]=r,m[5]=o,m[9]=a,m[13]=l,m[2]=c,m[6]=u,m[10]=h,m[14]=d,m[3]=f,m[7]=g,m[11]=_,m[15]=p,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Xr.setFromMatrixColumn(t,0).length(),r=1/Xr.setFromMatrixColumn(t,1).length(),o=1/Xr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),u=Math.cos(r),h=Math.sin(r);if(t.order==="XYZ"){let d=o*u,f=o*h,g=a*u,_=a*h;e[0]=l*u,e[4]=-l*h,e[8]=c,e[1]=f+g*c,e[5]=d-_*c,e[9]=-a*l,e[2]=_-d*c,e[6]=g+f*c,e[10]=o*l}else if(t.order==="YXZ"){let d=l*u,f=l*h,g=c*u,_=c*h;e[0]=d+_*a,e[4]=g*a-f,e[8]=o*c,e[1]=o*h,e[5]=o*u,e[9]=-a,e[2]=f*a-g,e[6]=_+d*a,e[10]=o*l}else if(t.order==="ZXY"){let d=l*u,f=l*h,g=c*u,_=c*h;e[0]=d-_*a,e[4]=-o*h,e[8]=g+f*a,e[1]=f+g*a,e[5]=o*u,e[9]=_-d*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let d=o*u,f=o*h,g=a*u,_=a*h;e[0]=l*u,e[4]=g*c-f,e[8]=d*c+_,e[1]=l*h,e[5]=_*c+d,e[9]=f*c-g,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*u,e[4]=_-d*h,e[8]=g*h+f,e[1]=h,e[5]=o*u,e[9]=-a*u,e[2]=-c*u,e[6]=f*h+g,e[10]=d-_*h}else if(t.order==="XZY"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*u,e[4]=-h,e[8]=c*u,e[1]=d*h+_,e[5]=o*u,e[9]=f*h-g,e[2]=g*h-f,e[6]=a*u,e[10]=_*h+d}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(xy,t,yy)}lookAt(t,e,n){let s=this.elements;return ci.subVectors(t,e),ci.lengthSq()===0&&(ci.z=1),ci.normalize(),Ds.crossVectors(n,ci),Ds.lengthSq()===0&&(Math.abs(n.z)===1?ci.x+=1e-4:ci.z+=1e-4,ci.normalize(),Ds.crossVectors(n,ci)),Ds.normalize(),pl.crossVectors(ci,Ds),s[0]=Ds.x,s[4]=pl.x,s[8]=ci.x,s[1]=Ds.y,s[5]=pl.y,s[9]=ci.y,s[2]=Ds.z,s[6]=pl.z,s[10]=ci.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],u=n[1],h=n[5],d=n[9],f=n[13],g=n[2],_=n[6],p=n[10],m=n[14],y=n[3],E=n[7],b=n[11],C=n[15],w=s[0],x=s[4],S=s[8],z=s[12],I=s[1],R=s[5],U=s[9],V=s[13],P=s[2],F=s[6],H=s[10],O=s[14],st=s[3],Z=s[7],j=s[11],tt=s[15];return r[0]=o*w+a*I+l*P+c*st,r[4]=o*x+a*R+l*F+c*Z,r[8]=o*S+a*U+l*H+c*j,r[12]=o*z+a*V+l*O+c*tt,r[1]=u*w+h*I+d*P+f*st,r[5]=u*x+h*R+d*F+f*Z,r[9]=u*S+h*U+d*H+f*j,r[13]=u*z+h*V+d*O+f*tt,r[2]=g*w+_*I+p*P+m*st,r[6]=g*x+_*R+p*F+m*Z,r[10]=g*S+_*U+p*H+m*j,r[14]=g*z+_*V+p*O+m*tt,r[3]=y*w+E*I+b*P+C*st,r[7]=y*x+E*R+b*F+C*Z,r[11]=y*S+E*U+b*H+C*j,r[15]=y*z+E*V+b*O+C*tt,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],u=t[2],h=t[6],d=t[10],f=t[14],g=t[3],_=t[7],p=t[11],m=t[15],y=l*f-c*d,E=a*f-c*h,b=a*d-l*h,C=o*f-c*u,w=o*d-l*u,x=o*h-a*u;return e*(_*y-p*E+m*b)-n*(g*y-p*C+m*w)+s*(g*E-_*C+m*x)-r*(g*b-_*w+p*x)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],u=t[10];return e*(o*u-a*c)-n*(r*u-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=t[9],d=t[10],f=t[11],g=t[12],_=t[13],p=t[14],m=t[15],y=e*a-n*o,E=e*l-s*o,b=e*c-r*o,C=n*l-s*a,w=n*c-r*a,x=s*c-r*l,S=u*_-h*g,z=u*p-d*g,I=u*m-f*g,R=h*p-d*_,U=h*m-f*_,V=d*m-f*p,P=y*V-E*U+b*R+C*I-w*z+x*S;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let F=1/P;return t[0]=(a*V-l*U+c*R)*F,t[1]=(s*U-n*V-r*R)*F,t[2]=(_*x-p*w+m*C)*F,t[3]=(d*w-h*x-f*C)*F,t[4]=(l*I-o*V-c*z)*F,t[5]=(e*V-s*I+r*z)*F,t[6]=(p*b-g*x-m*E)*F,t[7]=(u*x-d*b+f*E)*F,t[8]=(o*U-a*I+c*S)*F,t[9]=(n*I-e*U-r*S)*F,t[10]=(g*w-_*b+m*y)*F,t[11]=(h*b-u*w-f*y)*F,t[12]=(a*z-o*R-l*S)*F,t[13]=(e*R-n*z+s*S)*F,t[14]=(_*E-g*C-p*y)*F,t[15]=(u*C-h*E+d*y)*F,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,u=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,u*a+n,u*l-s*o,0,c*l-s*a,u*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,u=o+o,h=a+a,d=r*c,f=r*u,g=r*h,_=o*u,p=o*h,m=a*h,y=l*c,E=l*u,b=l*h,C=n.x,w=n.y,x=n.z;return s[0]=(1-(_+m))*C,s[1]=(f+b)*C,s[2]=(g-E)*C,s[3]=0,s[4]=(f-b)*w,s[5]=(1-(d+m))*w,s[6]=(p+y)*w,s[7]=0,s[8]=(g+E)*x,s[9]=(p-y)*x,s[10]=(1-(d+_))*x,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Xr.set(s[0],s[1],s[2]).length(),a=Xr.set(s[4],s[5],s[6]).length(),l=Xr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ci.copy(this);let c=1/o,u=1/a,h=1/l;return Ci.elements[0]*=c,Ci.elements[1]*=c,Ci.elements[2]*=c,Ci.elements[4]*=u,Ci.elements[5]*=u,Ci.elements[6]*=u,Ci.elements[8]*=h,Ci.elements[9]*=h,Ci.elements[10]*=h,e.setFromRotationMatrix(Ci),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=bi,l=!1){let c=this.elements,u=2*r/(e-t),h=2*r/(n-s),d=(e+t)/(e-t),f=(n+s)/(n-s),g,_;if(l)g=r/(o-r),_=o*r/(o-r);else if(a===bi)g=-(o+r)/(o-r),_=-2*o*r/(o-r);else if(a===ro)g=-o/(o-r),_=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=h,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=bi,l=!1){let c=this.elements,u=2/(e-t),h=2/(n-s),d=-(e+t)/(e-t),f=-(n+s)/(n-s),g,_;if(l)g=1/(o-r),_=o/(o-r);else if(a===bi)g=-2/(o-r),_=-(o+r)/(o-r);else if(a===ro)g=-1/(o-r),_=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=h,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Xr=new X,Ci=new $e,xy=new X(0,0,0),yy=new X(1,1,1),Ds=new X,pl=new X,ci=new X,dm=new $e,fm=new di,ms=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],u=s[9],h=s[2],d=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(_e(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-_e(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-h,r),this._z=0);break;case"ZXY":this._x=Math.asin(_e(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-h,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-_e(h,-1,1)),Math.abs(h)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(_e(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-u,c),this._y=Math.atan2(-h,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-_e(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-u,f),this._y=0);break;default:Jt("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return dm.makeRotationFromQuaternion(t),this.setFromRotationMatrix(dm,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return fm.setFromEuler(this),this.setFromQuaternion(fm,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ms.DEFAULT_ORDER="XYZ";var na=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},vy=0,pm=new X,$r=new di,ls=new $e,ml=new X,Ho=new X,by=new X,My=new di,mm=new X(1,0,0),gm=new X(0,1,0),_m=new X(0,0,1),xm={type:"added"},Sy={type:"removed"},qr={type:"childadded",child:null},bu={type:"childremoved",child:null},kn=class i extends Di{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:vy++}),this.uuid=yo(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new X,e=new ms,n=new di,s=new X(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new $e},normalMatrix:{value:new oe}}),this.matrix=new $e,this.matrixWorld=new $e,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new na,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return $r.setFromAxisAngle(t,e),this.quaternion.multiply($r),this}rotateOnWorldAxis(t,e){return $r.setFromAxisAngle(t,e),this.quaternion.premultiply($r),this}rotateX(t){return this.rotateOnAxis(mm,t)}rotateY(t){return this.rotateOnAxis(gm,t)}rotateZ(t){return this.rotateOnAxis(_m,t)}translateOnAxis(t,e){return pm.copy(t).applyQuaternion(this.quaternion),this.position.add(pm.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(mm,t)}translateY(t){return this.translateOnAxis(gm,t)}translateZ(t){return this.translateOnAxis(_m,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(ls.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?ml.copy(t):ml.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Ho.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?ls.lookAt(Ho,ml,this.up):ls.lookAt(ml,Ho,this.up),this.quaternion.setFromRotationMatrix(ls),s&&(ls.extractRotation(s.matrixWorld),$r.setFromRotationMatrix(ls),this.quaternion.premultiply($r.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(se("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(xm),qr.child=t,this.dispatchEvent(qr),qr.child=null):se("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(Sy),bu.child=t,this.dispatchEvent(bu),bu.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),ls.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),ls.multiply(t.parent.matrixWorld)),t.applyMatrix4(ls),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(xm),qr.child=t,this.dispatchEvent(qr),qr.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ho,t,by),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ho,My,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,u=l.length;c<u;c++){let h=l[c];r(t.shapes,h)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),u=o(t.images),h=o(t.shapes),d=o(t.skeletons),f=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),u.length>0&&(n.images=u),h.length>0&&(n.shapes=h),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let l=[];for(let c in a){let u=a[c];delete u.metadata,l.push(u)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};kn.DEFAULT_UP=new X(0,1,0);kn.DEFAULT_MATRIX_AUTO_UPDATE=!0;kn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Li=class extends kn{constructor(){super(),this.isGroup=!0,this.type="Group"}},wy={type:"move"},co=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Li,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Li,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new X,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new X),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Li,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new X,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new X,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let _ of t.hand.values()){let p=e.getJointPose(_,n),m=this._getHandJoint(c,_);p!==null&&(m.matrix.fromArray(p.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=p.radius),m.visible=p!==null}let u=c.joints["index-finger-tip"],h=c.joints["thumb-tip"],d=u.position.distanceTo(h.position),f=.02,g=.005;c.inputState.pinching&&d>f+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&d<=f-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(wy)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Li;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},vg={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ns={h:0,s:0,l:0},gl={h:0,s:0,l:0};function Mu(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var le=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=ui){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,be.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=be.workingColorSpace){return this.r=t,this.g=e,this.b=n,be.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=be.workingColorSpace){if(t=_d(t,1),e=_e(e,0,1),n=_e(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=Mu(o,r,t+1/3),this.g=Mu(o,r,t),this.b=Mu(o,r,t-1/3)}return be.colorSpaceToWorking(this,s),this}setStyle(t,e=ui){function n(r){r!==void 0&&parseFloat(r)<1&&Jt("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:Jt("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);Jt("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=ui){let n=vg[t.toLowerCase()];return n!==void 0?this.setHex(n,e):Jt("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=fs(t.r),this.g=fs(t.g),this.b=fs(t.b),this}copyLinearToSRGB(t){return this.r=io(t.r),this.g=io(t.g),this.b=io(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=ui){return be.workingToColorSpace(On.copy(this),t),Math.round(_e(On.r*255,0,255))*65536+Math.round(_e(On.g*255,0,255))*256+Math.round(_e(On.b*255,0,255))}getHexString(t=ui){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=be.workingColorSpace){be.workingToColorSpace(On.copy(this),e);let n=On.r,s=On.g,r=On.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,u=(a+o)/2;if(a===o)l=0,c=0;else{let h=o-a;switch(c=u<=.5?h/(o+a):h/(2-o-a),o){case n:l=(s-r)/h+(s<r?6:0);break;case s:l=(r-n)/h+2;break;case r:l=(n-s)/h+4;break}l/=6}return t.h=l,t.s=c,t.l=u,t}getRGB(t,e=be.workingColorSpace){return be.workingToColorSpace(On.copy(this),e),t.r=On.r,t.g=On.g,t.b=On.b,t}getStyle(t=ui){be.workingToColorSpace(On.copy(this),t);let e=On.r,n=On.g,s=On.b;return t!==ui?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Ns),this.setHSL(Ns.h+t,Ns.s+e,Ns.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Ns),t.getHSL(gl);let n=Jo(Ns.h,gl.h,e),s=Jo(Ns.s,gl.s,e),r=Jo(Ns.l,gl.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},On=new le;le.NAMES=vg;var ia=class extends kn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ms,this.environmentIntensity=1,this.environmentRotation=new ms,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Pi=new X,cs=new X,Su=new X,hs=new X,Yr=new X,Zr=new X,ym=new X,wu=new X,Eu=new X,Tu=new X,Au=new Ye,Ru=new Ye,Cu=new Ye,Bs=class i{constructor(t=new X,e=new X,n=new X){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Pi.subVectors(t,e),s.cross(Pi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Pi.subVectors(s,e),cs.subVectors(n,e),Su.subVectors(t,e);let o=Pi.dot(Pi),a=Pi.dot(cs),l=Pi.dot(Su),c=cs.dot(cs),u=cs.dot(Su),h=o*c-a*a;if(h===0)return r.set(0,0,0),null;let d=1/h,f=(c*l-a*u)*d,g=(o*u-a*l)*d;return r.set(1-f-g,g,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,hs)===null?!1:hs.x>=0&&hs.y>=0&&hs.x+hs.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,hs)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,hs.x),l.addScaledVector(o,hs.y),l.addScaledVector(a,hs.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return Au.setScalar(0),Ru.setScalar(0),Cu.setScalar(0),Au.fromBufferAttribute(t,e),Ru.fromBufferAttribute(t,n),Cu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(Au,r.x),o.addScaledVector(Ru,r.y),o.addScaledVector(Cu,r.z),o}static isFrontFacing(t,e,n,s){return Pi.subVectors(n,e),cs.subVectors(t,e),Pi.cross(cs).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Pi.subVectors(this.c,this.b),cs.subVectors(this.a,this.b),Pi.cross(cs).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Yr.subVectors(s,n),Zr.subVectors(r,n),wu.subVectors(t,n);let l=Yr.dot(wu),c=Zr.dot(wu);if(l<=0&&c<=0)return e.copy(n);Eu.subVectors(t,s);let u=Yr.dot(Eu),h=Zr.dot(Eu);if(u>=0&&h<=u)return e.copy(s);let d=l*h-u*c;if(d<=0&&l>=0&&u<=0&&l-u>0)return o=l/(l-u),e.copy(n).addScaledVector(Yr,o);Tu.subVectors(t,r);let f=Yr.dot(Tu),g=Zr.dot(Tu);if(g>=0&&f<=g)return e.copy(r);let _=f*c-l*g;if(_<=0&&c>=0&&g<=0)return a=c/(c-g),e.copy(n).addScaledVector(Zr,a);let p=u*g-f*h;if(p<=0&&h-u>=0&&f-g>=0)return ym.subVectors(r,s),a=(h-u)/(h-u+(f-g)),e.copy(s).addScaledVector(ym,a);let m=1/(p+_+d);return o=_*m,a=d*m,e.copy(n).addScaledVector(Yr,o).addScaledVector(Zr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},ks=class{constructor(t=new X(1/0,1/0,1/0),e=new X(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ii.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ii.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ii.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ii):Ii.fromBufferAttribute(r,o),Ii.applyMatrix4(t.matrixWorld),this.expandByPoint(Ii);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),_l.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),_l.copy(n.boundingBox)),_l.applyMatrix4(t.matrixWorld),this.union(_l)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ii),Ii.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Wo),xl.subVectors(this.max,Wo),Jr.subVectors(t.a,Wo),jr.subVectors(t.b,Wo),Kr.subVectors(t.c,Wo),Us.subVectors(jr,Jr),Fs.subVectors(Kr,jr),ar.subVectors(Jr,Kr);let e=[0,-Us.z,Us.y,0,-Fs.z,Fs.y,0,-ar.z,ar.y,Us.z,0,-Us.x,Fs.z,0,-Fs.x,ar.z,0,-ar.x,-Us.y,Us.x,0,-Fs.y,Fs.x,0,-ar.y,ar.x,0];return!Pu(e,Jr,jr,Kr,xl)||(e=[1,0,0,0,1,0,0,0,1],!Pu(e,Jr,jr,Kr,xl))?!1:(yl.crossVectors(Us,Fs),e=[yl.x,yl.y,yl.z],Pu(e,Jr,jr,Kr,xl))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ii).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ii).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(us[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),us[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),us[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),us[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),us[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),us[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),us[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),us[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(us),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},us=[new X,new X,new X,new X,new X,new X,new X,new X],Ii=new X,_l=new ks,Jr=new X,jr=new X,Kr=new X,Us=new X,Fs=new X,ar=new X,Wo=new X,xl=new X,yl=new X,lr=new X;function Pu(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){lr.fromArray(i,r);let a=s.x*Math.abs(lr.x)+s.y*Math.abs(lr.y)+s.z*Math.abs(lr.z),l=t.dot(lr),c=e.dot(lr),u=n.dot(lr);if(Math.max(-Math.max(l,c,u),Math.min(l,c,u))>a)return!1}return!0}var fn=new X,vl=new re,Ey=0,Bn=class extends Di{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Ey++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=fg,this.updateRanges=[],this.gpuType=Fi,this.version=0,this._normalizationScale=t!==void 0?yd(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)vl.fromBufferAttribute(this,e),vl.applyMatrix3(t),this.setXY(e,vl.x,vl.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyMatrix3(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyMatrix4(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyNormalMatrix(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.transformDirection(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):xg(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):yg(t,this.array)}};var sa=class extends Bn{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var ra=class extends Bn{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Ln=class extends Bn{constructor(t,e,n){super(new Float32Array(t),e,n)}},Ty=new ks,Xo=new X,Iu=new X,ur=class{constructor(t=new X,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):Ty.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Xo.subVectors(t,this.center);let e=Xo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(Xo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(Iu.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Xo.copy(t.center).add(Iu)),this.expandByPoint(Xo.copy(t.center).sub(Iu))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},Ay=0,vi=new $e,Lu=new kn,Qr=new X,hi=new ks,$o=new ks,Rn=new X,zn=class i extends Di{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:Ay++}),this.uuid=yo(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(Kx(t)?ra:sa)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new oe().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return vi.makeRotationFromQuaternion(t),this.applyMatrix4(vi),this}rotateX(t){return vi.makeRotationX(t),this.applyMatrix4(vi),this}rotateY(t){return vi.makeRotationY(t),this.applyMatrix4(vi),this}rotateZ(t){return vi.makeRotationZ(t),this.applyMatrix4(vi),this}translate(t,e,n){return vi.makeTranslation(t,e,n),this.applyMatrix4(vi),this}scale(t,e,n){return vi.makeScale(t,e,n),this.applyMatrix4(vi),this}lookAt(t){return Lu.lookAt(t),Lu.updateMatrix(),this.applyMatrix4(Lu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Qr).negate(),this.translate(Qr.x,Qr.y,Qr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Ln(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&Jt("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new ks);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){se("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new X(-1/0,-1/0,-1/0),new X(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];hi.setFromBufferAttribute(r),this.morphTargetsRelative?(Rn.addVectors(this.boundingBox.min,hi.min),this.boundingBox.expandByPoint(Rn),Rn.addVectors(this.boundingBox.max,hi.max),this.boundingBox.expandByPoint(Rn)):(this.boundingBox.expandByPoint(hi.min),this.boundingBox.expandByPoint(hi.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&se('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ur);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){se("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new X,1/0);return}if(t){let n=this.boundingSphere.center;if(hi.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];$o.setFromBufferAttribute(a),this.morphTargetsRelative?(Rn.addVectors(hi.min,$o.min),hi.expandByPoint(Rn),Rn.addVectors(hi.max,$o.max),hi.expandByPoint(Rn)):(hi.expandByPoint($o.min),hi.expandByPoint($o.max))}hi.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Rn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Rn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,u=a.count;c<u;c++)Rn.fromBufferAttribute(a,c),l&&(Qr.fromBufferAttribute(t,c),Rn.add(Qr)),s=Math.max(s,n.distanceToSquared(Rn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&se('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){se("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Bn(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let z=0;z<n.count;z++)a[z]=new X,l[z]=new X;let u=new X,h=new X,d=new X,f=new re,g=new re,_=new re,p=new X,m=new X;function y(z,I,R){c[z]=c[I]=c[R]=1,u.fromBufferAttribute(n,z),h.fromBufferAttribute(n,I),d.fromBufferAttribute(n,R),f.fromBufferAttribute(r,z),g.fromBufferAttribute(r,I),_.fromBufferAttribute(r,R),h.sub(u),d.sub(u),g.sub(f),_.sub(f);let U=1/(g.x*_.y-_.x*g.y);isFinite(U)&&(p.copy(h).multiplyScalar(_.y).addScaledVector(d,-g.y).multiplyScalar(U),m.copy(d).multiplyScalar(g.x).addScaledVector(h,-_.x).multiplyScalar(U),a[z].add(p),a[I].add(p),a[R].add(p),l[z].add(m),l[I].add(m),l[R].add(m))}let E=this.groups;E.length===0&&(E=[{start:0,count:t.count}]);for(let z=0,I=E.length;z<I;++z){let R=E[z],U=R.start,V=R.count;for(let P=U,F=U+V;P<F;P+=3)y(t.getX(P+0),t.getX(P+1),t.getX(P+2))}let b=new X,C=new X,w=new X,x=new X;function S(z){w.fromBufferAttribute(s,z),x.copy(w);let I=a[z];b.copy(I),b.sub(w.multiplyScalar(w.dot(I))).normalize(),C.crossVectors(x,I);let U=C.dot(l[z])<0?-1:1;o.setXYZW(z,b.x,b.y,b.z,U)}for(let z=0,I=n.count;z<I;++z)c[z]&&S(z);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Bn(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new X,r=new X,o=new X,a=new X,l=new X,c=new X,u=new X,h=new X;if(t)for(let d=0,f=t.count;d<f;d+=3){let g=t.getX(d+0),_=t.getX(d+1),p=t.getX(d+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,_),o.fromBufferAttribute(e,p),u.subVectors(o,r),h.subVectors(s,r),u.cross(h),a.fromBufferAttribute(n,g),l.fromBufferAttribute(n,_),c.fromBufferAttribute(n,p),a.add(u),l.add(u),c.add(u),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(_,l.x,l.y,l.z),n.setXYZ(p,c.x,c.y,c.z)}else for(let d=0,f=e.count;d<f;d+=3)s.fromBufferAttribute(e,d+0),r.fromBufferAttribute(e,d+1),o.fromBufferAttribute(e,d+2),u.subVectors(o,r),h.subVectors(s,r),u.cross(h),n.setXYZ(d+0,u.x,u.y,u.z),n.setXYZ(d+1,u.x,u.y,u.z),n.setXYZ(d+2,u.x,u.y,u.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Rn.fromBufferAttribute(t,e),Rn.normalize(),t.setXYZ(e,Rn.x,Rn.y,Rn.z)}toNonIndexed(){function t(a,l){let c=a.array,u=a.itemSize,h=a.normalized,d=new c.constructor(l.length*u),f=0,g=0;for(let _=0,p=l.length;_<p;_++){a.isInterleavedBufferAttribute?f=l[_]*a.data.stride+a.offset:f=l[_]*u;for(let m=0;m<u;m++)d[g++]=c[f++]}return new Bn(d,u,h)}if(this.index===null)return Jt("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let u=0,h=c.length;u<h;u++){let d=c[u],f=t(d,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],u=[];for(let h=0,d=c.length;h<d;h++){let f=c[h];u.push(f.toJSON(t.data))}u.length>0&&(s[l]=u,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let u=s[c];this.setAttribute(c,u.clone(e))}let r=t.morphAttributes;for(let c in r){let u=[],h=r[c];for(let d=0,f=h.length;d<f;d++)u.push(h[d].clone(e));this.morphAttributes[c]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,u=o.length;c<u;c++){let h=o[c];this.addGroup(h.start,h.count,h.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var Du=new X,Ry=new X,Cy=new oe,Yn=class{constructor(t=new X(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=Du.subVectors(n,e).cross(Ry.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(Du),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||Cy.getNormalMatrix(t),s=this.coplanarPoint(Du).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},Py=0,gs=class extends Di{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Py++}),this.uuid=yo(),this.name="",this.type="Material",this.blending=go,this.side=Ni,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=Zu,this.blendDst=Ju,this.blendEquation=mr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new le(0,0,0),this.blendAlpha=0,this.depthFunc=so,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=ag,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=Ol,this.stencilZFail=Ol,this.stencilZPass=Ol,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){Jt(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Jt(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new le().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new Yn().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new re().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new re().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ds=new X,Nu=new X,bl=new X,Ml=new X,dr=class{constructor(t=new X,e=new X(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ds)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=ds.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(ds.copy(this.origin).addScaledVector(this.direction,e),ds.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){Nu.copy(t).add(e).multiplyScalar(.5),bl.copy(e).sub(t).normalize(),Ml.copy(this.origin).sub(Nu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(bl),a=Ml.dot(this.direction),l=-Ml.dot(bl),c=Ml.lengthSq(),u=Math.abs(1-o*o),h,d,f,g;if(u>0)if(h=o*l-a,d=o*a-l,g=r*u,h>=0)if(d>=-g)if(d<=g){let _=1/u;h*=_,d*=_,f=h*(h+o*d+2*a)+d*(o*h+d+2*l)+c}else d=r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*l)+c;else d=-r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*l)+c;else d<=-g?(h=Math.max(0,-(-o*r+a)),d=h>0?-r:Math.min(Math.max(-r,-l),r),f=-h*h+d*(d+2*l)+c):d<=g?(h=0,d=Math.min(Math.max(-r,-l),r),f=d*(d+2*l)+c):(h=Math.max(0,-(o*r+a)),d=h>0?r:Math.min(Math.max(-r,-l),r),f=-h*h+d*(d+2*l)+c);else d=o>0?-r:r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,h),s&&s.copy(Nu).addScaledVector(bl,d),f}intersectSphere(t,e){if(t.radius<0)return null;ds.subVectors(t.center,this.origin);let n=ds.dot(this.direction),s=ds.dot(ds)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,u=1/this.direction.y,h=1/this.direction.z,d=this.origin;return c>=0?(n=(t.min.x-d.x)*c,s=(t.max.x-d.x)*c):(n=(t.max.x-d.x)*c,s=(t.min.x-d.x)*c),u>=0?(r=(t.min.y-d.y)*u,o=(t.max.y-d.y)*u):(r=(t.max.y-d.y)*u,o=(t.min.y-d.y)*u),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),h>=0?(a=(t.min.z-d.z)*h,l=(t.max.z-d.z)*h):(a=(t.max.z-d.z)*h,l=(t.min.z-d.z)*h),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,ds)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,u=a.z,h=t.x-o.x,d=t.y-o.y,f=t.z-o.z,g=e.x-o.x,_=e.y-o.y,p=e.z-o.z,m=n.x-o.x,y=n.y-o.y,E=n.z-o.z,b=Math.abs(l),C=Math.abs(c),w=Math.abs(u),x,S,z,I,R,U,V,P,F,H,O,st;if(b>=C&&b>=w?(z=l,U=h,F=g,st=m,l>=0?(x=c,S=u,I=d,R=f,V=_,P=p,H=y,O=E):(x=u,S=c,I=f,R=d,V=p,P=_,H=E,O=y)):C>=w?(z=c,U=d,F=_,st=y,c>=0?(x=u,S=l,I=f,R=h,V=p,P=g,H=E,O=m):(x=l,S=u,I=h,R=f,V=g,P=p,H=m,O=E)):(z=u,U=f,F=p,st=E,u>=0?(x=l,S=c,I=h,R=d,V=g,P=_,H=m,O=y):(x=c,S=l,I=d,R=h,V=_,P=g,H=y,O=m)),z===0)return null;let Z=x/z,j=S/z,tt=1/z,ct=I-Z*U,at=R-j*U,$=V-Z*F,dt=P-j*F,pt=H-Z*st,vt=O-j*st,bt=pt*dt-vt*$,_t=ct*vt-at*pt,Nt=$*at-dt*ct;if(s){if(bt<0||_t<0||Nt<0)return null}else if((bt<0||_t<0||Nt<0)&&(bt>0||_t>0||Nt>0))return null;let Ut=bt+_t+Nt;if(Ut===0)return null;let ee=tt*(bt*U+_t*F+Nt*st);return(Ut>0?ee<0:ee>0)?null:this.at(ee/Ut,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},_s=class extends gs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new le(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ms,this.combine=gc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},vm=new $e,cr=new dr,Sl=new ur,bm=new X,wl=new X,El=new X,Tl=new X,Uu=new X,Al=new X,Mm=new X,Rl=new X,Pn=class extends kn{constructor(t=new zn,e=new _s){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){Al.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let u=a[l],h=r[l];u!==0&&(Uu.fromBufferAttribute(h,t),o?Al.addScaledVector(Uu,u):Al.addScaledVector(Uu.sub(e),u))}e.add(Al)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),Sl.copy(n.boundingSphere),Sl.applyMatrix4(r),cr.copy(t.ray).recast(t.near),!(Sl.containsPoint(cr.origin)===!1&&(cr.intersectSphere(Sl,bm)===null||cr.origin.distanceToSquared(bm)>(t.far-t.near)**2))&&(vm.copy(r).invert(),cr.copy(t.ray).applyMatrix4(vm),!(n.boundingBox!==null&&cr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,cr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,u=r.attributes.uv1,h=r.attributes.normal,d=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let p=d[g],m=o[p.materialIndex],y=Math.max(p.start,f.start),E=Math.min(a.count,Math.min(p.start+p.count,f.start+f.count));for(let b=y,C=E;b<C;b+=3){let w=a.getX(b),x=a.getX(b+1),S=a.getX(b+2);s=Cl(this,m,t,n,c,u,h,w,x,S),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(a.count,f.start+f.count);for(let p=g,m=_;p<m;p+=3){let y=a.getX(p),E=a.getX(p+1),b=a.getX(p+2);s=Cl(this,o,t,n,c,u,h,y,E,b),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let p=d[g],m=o[p.materialIndex],y=Math.max(p.start,f.start),E=Math.min(l.count,Math.min(p.start+p.count,f.start+f.count));for(let b=y,C=E;b<C;b+=3){let w=b,x=b+1,S=b+2;s=Cl(this,m,t,n,c,u,h,w,x,S),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(l.count,f.start+f.count);for(let p=g,m=_;p<m;p+=3){let y=p,E=p+1,b=p+2;s=Cl(this,o,t,n,c,u,h,y,E,b),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}}};function Iy(i,t,e,n,s,r,o,a){let l;if(t.side===Dn?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Ni,a),l===null)return null;Rl.copy(a),Rl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(Rl);return c<e.near||c>e.far?null:{distance:c,point:Rl.clone(),object:i}}function Cl(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,wl),i.getVertexPosition(l,El),i.getVertexPosition(c,Tl);let u=Iy(i,t,e,n,wl,El,Tl,Mm);if(u){let h=new X;Bs.getBarycoord(Mm,wl,El,Tl,h),s&&(u.uv=Bs.getInterpolatedAttribute(s,a,l,c,h,new re)),r&&(u.uv1=Bs.getInterpolatedAttribute(r,a,l,c,h,new re)),o&&(u.normal=Bs.getInterpolatedAttribute(o,a,l,c,h,new X),u.normal.dot(n.direction)>0&&u.normal.multiplyScalar(-1));let d={a,b:l,c,normal:new X,materialIndex:0};Bs.getNormal(wl,El,Tl,d.normal),u.face=d,u.barycoord=h}return u}var jl=class extends Qn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=Cn,u=Cn,h,d){super(null,o,a,l,c,u,s,r,h,d),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var hr=new ur,Ly=new re(.5,.5),Pl=new X,zs=class{constructor(t=new Yn,e=new Yn,n=new Yn,s=new Yn,r=new Yn,o=new Yn){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=bi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],u=r[4],h=r[5],d=r[6],f=r[7],g=r[8],_=r[9],p=r[10],m=r[11],y=r[12],E=r[13],b=r[14],C=r[15];if(s[0].setComponents(c-o,f-u,m-g,C-y).normalize(),s[1].setComponents(c+o,f+u,m+g,C+y).normalize(),s[2].setComponents(c+a,f+h,m+_,C+E).normalize(),s[3].setComponents(c-a,f-h,m-_,C-E).normalize(),n)s[4].setComponents(l,d,p,b).normalize(),s[5].setComponents(c-l,f-d,m-p,C-b).normalize();else if(s[4].setComponents(c-l,f-d,m-p,C-b).normalize(),e===bi)s[5].setComponents(c+l,f+d,m+p,C+b).normalize();else if(e===ro)s[5].setComponents(l,d,p,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),hr.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),hr.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(hr)}intersectsSprite(t){hr.center.set(0,0,0);let e=Ly.distanceTo(t.center);return hr.radius=.7071067811865476+e,hr.applyMatrix4(t.matrixWorld),this.intersectsSphere(hr)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(Pl.x=s.normal.x>0?t.max.x:t.min.x,Pl.y=s.normal.y>0?t.max.y:t.min.y,Pl.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(Pl)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},Sm=new $e,Kl=class i{constructor(){this.coordinateSystem=bi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];Sm.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new zs),n[s].setFromProjectionMatrix(Sm,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new zs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var Vs=class extends gs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new le(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Ql=new X,tc=new X,wm=new $e,qo=new dr,Il=new ur,Fu=new X,Em=new X,oa=class extends kn{constructor(t=new zn,e=new Vs){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Ql.fromBufferAttribute(e,s-1),tc.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Ql.distanceTo(tc);t.setAttribute("lineDistance",new Ln(n,1))}else Jt("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Il.copy(n.boundingSphere),Il.applyMatrix4(s),Il.radius+=r,t.ray.intersectsSphere(Il)===!1)return;wm.copy(s).invert(),qo.copy(t.ray).applyMatrix4(wm);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,u=n.index,d=n.attributes.position;if(u!==null){let f=Math.max(0,o.start),g=Math.min(u.count,o.start+o.count);for(let _=f,p=g-1;_<p;_+=c){let m=u.getX(_),y=u.getX(_+1),E=Ll(this,t,qo,l,m,y,_);E&&e.push(E)}if(this.isLineLoop){let _=u.getX(g-1),p=u.getX(f),m=Ll(this,t,qo,l,_,p,g-1);m&&e.push(m)}}else{let f=Math.max(0,o.start),g=Math.min(d.count,o.start+o.count);for(let _=f,p=g-1;_<p;_+=c){let m=Ll(this,t,qo,l,_,_+1,_);m&&e.push(m)}if(this.isLineLoop){let _=Ll(this,t,qo,l,g-1,f,g-1);_&&e.push(_)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function Ll(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Ql.fromBufferAttribute(a,s),tc.fromBufferAttribute(a,r),e.distanceSqToSegment(Ql,tc,Fu,Em)>n)return;Fu.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(Fu);if(!(c<t.near||c>t.far))return{distance:c,point:Em.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var Tm=new X,Am=new X,ho=class extends oa{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)Tm.fromBufferAttribute(e,s),Am.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Tm.distanceTo(Am);t.setAttribute("lineDistance",new Ln(n,1))}else Jt("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},aa=class extends oa{constructor(t,e){super(t,e),this.isLineLoop=!0,this.type="LineLoop"}};var la=class extends Qn{constructor(t=[],e=gr,n,s,r,o,a,l,c,u){super(t,e,n,s,r,o,a,l,c,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var xs=class extends Qn{constructor(t,e,n=Ui,s,r,o,a=Cn,l=Cn,c,u=ps,h=1){if(u!==ps&&u!==vs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:t,height:e,depth:h};super(d,s,r,o,a,l,u,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new lo(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},ca=class extends xs{constructor(t,e=Ui,n=gr,s,r,o=Cn,a=Cn,l,c=ps){let u={width:t,height:t,depth:1},h=[u,u,u,u,u,u];super(t,t,e,n,s,r,o,a,l,c),this.image=h,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},ha=class extends Qn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},uo=class i extends zn{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],u=[],h=[],d=0,f=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Ln(c,3)),this.setAttribute("normal",new Ln(u,3)),this.setAttribute("uv",new Ln(h,2));function g(_,p,m,y,E,b,C,w,x,S,z){let I=b/x,R=C/S,U=b/2,V=C/2,P=w/2,F=x+1,H=S+1,O=0,st=0,Z=new X;for(let j=0;j<H;j++){let tt=j*R-V;for(let ct=0;ct<F;ct++){let at=ct*I-U;Z[_]=at*y,Z[p]=tt*E,Z[m]=P,c.push(Z.x,Z.y,Z.z),Z[_]=0,Z[p]=0,Z[m]=w>0?1:-1,u.push(Z.x,Z.y,Z.z),h.push(ct/x),h.push(1-j/S),O+=1}}for(let j=0;j<S;j++)for(let tt=0;tt<x;tt++){let ct=d+tt+F*j,at=d+tt+F*(j+1),$=d+(tt+1)+F*(j+1),dt=d+(tt+1)+F*j;l.push(ct,at,dt),l.push(at,$,dt),st+=6}a.addGroup(f,st,z),f+=st,d+=O}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var fr=class i extends zn{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,u=l+1,h=t/a,d=e/l,f=[],g=[],_=[],p=[];for(let m=0;m<u;m++){let y=m*d-o;for(let E=0;E<c;E++){let b=E*h-r;g.push(b,-y,0),_.push(0,0,1),p.push(E/a),p.push(1-m/l)}}for(let m=0;m<l;m++)for(let y=0;y<a;y++){let E=y+c*m,b=y+c*(m+1),C=y+1+c*(m+1),w=y+1+c*m;f.push(E,b,w),f.push(b,C,w)}this.setIndex(f),this.setAttribute("position",new Ln(g,3)),this.setAttribute("normal",new Ln(_,3)),this.setAttribute("uv",new Ln(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var ua=class i extends zn{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,u=[],h=new X,d=new X,f=[],g=[],_=[],p=[];for(let m=0;m<=n;m++){let y=[],E=m/n,b=o+E*a,C=t*Math.cos(b),w=Math.sqrt(t*t-C*C),x=0;m===0&&o===0?x=.5/e:m===n&&l===Math.PI&&(x=-.5/e);for(let S=0;S<=e;S++){let z=S/e,I=s+z*r;h.x=-w*Math.cos(I),h.y=C,h.z=w*Math.sin(I),g.push(h.x,h.y,h.z),d.copy(h).normalize(),_.push(d.x,d.y,d.z),p.push(z+x,1-E),y.push(c++)}u.push(y)}for(let m=0;m<n;m++)for(let y=0;y<e;y++){let E=u[m][y+1],b=u[m][y],C=u[m+1][y],w=u[m+1][y+1];(m!==0||o>0)&&f.push(E,b,w),(m!==n-1||l<Math.PI)&&f.push(b,C,w)}this.setIndex(f),this.setAttribute("position",new Ln(g,3)),this.setAttribute("normal",new Ln(_,3)),this.setAttribute("uv",new Ln(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function xr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(Rm(s))s.isRenderTargetTexture?(Jt("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(Rm(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Vn(i){let t={};for(let e=0;e<i.length;e++){let n=xr(i[e]);for(let s in n)t[s]=n[s]}return t}function Rm(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function Dy(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function bd(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:be.workingColorSpace}var bg={clone:xr,merge:Vn},Ny=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Uy=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Zi=class extends gs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=Ny,this.fragmentShader=Uy,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=xr(t.uniforms),this.uniformsGroups=Dy(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new le().setHex(s.value);break;case"v2":this.uniforms[n].value=new re().fromArray(s.value);break;case"v3":this.uniforms[n].value=new X().fromArray(s.value);break;case"v4":this.uniforms[n].value=new Ye().fromArray(s.value);break;case"m3":this.uniforms[n].value=new oe().fromArray(s.value);break;case"m4":this.uniforms[n].value=new $e().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},ec=class extends Zi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var da=class extends gs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new le(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new le(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=nh,this.normalScale=new re(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ms,this.combine=gc,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},nc=class extends gs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=rg,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},ic=class extends gs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function to(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function Dl(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Gs=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},sc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:ku,endingEnd:ku}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case zu:r=t,a=2*e-n;break;case Vu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case zu:o=t,l=2*n-e;break;case Vu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,u=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*u,this._offsetNext=o*u}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this._offsetPrev,h=this._offsetNext,d=this._weightPrev,f=this._weightNext,g=(n-e)/(s-e),_=g*g,p=_*g,m=-d*p+2*d*_-d*g,y=(1+d)*p+(-1.5-2*d)*_+(-.5+d)*g+1,E=(-1-f)*p+(1.5+f)*_+.5*g,b=f*p-f*_;for(let C=0;C!==a;++C)r[C]=m*o[u+C]+y*o[c+C]+E*o[l+C]+b*o[h+C];return r}},rc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=(n-e)/(s-e),h=1-u;for(let d=0;d!==a;++d)r[d]=o[c+d]*h+o[l+d]*u;return r}},oc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},ac=class extends Gs{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this.inTangents,h=this.outTangents;if(!u||!h){let g=(n-e)/(s-e),_=1-g;for(let p=0;p!==a;++p)r[p]=o[c+p]*_+o[l+p]*g;return r}let d=a*2,f=t-1;for(let g=0;g!==a;++g){let _=o[c+g],p=o[l+g],m=f*d+g*2,y=h[m],E=h[m+1],b=t*d+g*2,C=u[b],w=u[b+1],x=Oy(n,e,y,C,s);r[g]=Mg(x,_,E,w,p)}return r}};function Mg(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function Fy(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function Oy(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=Mg(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=Fy(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var pi=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=to(e,this.TimeBufferType),this.values=to(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:to(t.times,Array),values:to(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),Dl(t.settings)&&(n.settings={inTangents:to(t.settings.inTangents,Array),outTangents:to(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new oc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new rc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new sc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new ac(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case jo:e=this.InterpolantFactoryMethodDiscrete;break;case ql:e=this.InterpolantFactoryMethodLinear;break;case Fl:e=this.InterpolantFactoryMethodSmooth;break;case Bu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Jt("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return jo;case this.InterpolantFactoryMethodLinear:return ql;case this.InterpolantFactoryMethodSmooth:return Fl;case this.InterpolantFactoryMethodBezier:return Bu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;Dl(this.settings)&&(Cm(this.settings.inTangents,t),Cm(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;Dl(this.settings)&&(Pm(this.settings.inTangents,t),Pm(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(se("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(se("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){se("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){se("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&Qx(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){se("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Fl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],u=t[a+1];if(c!==u&&(a!==1||c!==t[0]))if(s)l=!0;else{let h=a*n,d=h-n,f=h+n;for(let g=0;g!==n;++g){let _=e[h+g];if(_!==e[d+g]||_!==e[f+g]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let h=a*n,d=o*n;for(let f=0;f!==n;++f)e[d+f]=e[h+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,Dl(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Cm(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function Pm(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}pi.prototype.ValueTypeName="";pi.prototype.TimeBufferType=Float32Array;pi.prototype.ValueBufferType=Float32Array;pi.prototype.DefaultInterpolation=ql;var Hs=class extends pi{constructor(t,e,n){super(t,e,n)}};Hs.prototype.ValueTypeName="bool";Hs.prototype.ValueBufferType=Array;Hs.prototype.DefaultInterpolation=jo;Hs.prototype.InterpolantFactoryMethodLinear=void 0;Hs.prototype.InterpolantFactoryMethodSmooth=void 0;var lc=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}};lc.prototype.ValueTypeName="color";var cc=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}};cc.prototype.ValueTypeName="number";var hc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let u=c+a;c!==u;c+=4)di.slerpFlat(r,0,o,c-a,o,c,l);return r}},fa=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new hc(this.times,this.values,this.getValueSize(),t)}};fa.prototype.ValueTypeName="quaternion";fa.prototype.InterpolantFactoryMethodSmooth=void 0;var Ws=class extends pi{constructor(t,e,n){super(t,e,n)}};Ws.prototype.ValueTypeName="string";Ws.prototype.ValueBufferType=Array;Ws.prototype.DefaultInterpolation=jo;Ws.prototype.InterpolantFactoryMethodLinear=void 0;Ws.prototype.InterpolantFactoryMethodSmooth=void 0;var uc=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}};uc.prototype.ValueTypeName="vector";var dc=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(u){a++,r===!1&&s.onStart!==void 0&&s.onStart(u,o,a),r=!0},this.itemEnd=function(u){o++,s.onProgress!==void 0&&s.onProgress(u,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(u){s.onError!==void 0&&s.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),l?l(u):u},this.setURLModifier=function(u){return l=u,this},this.addHandler=function(u,h){return c.push(u,h),this},this.removeHandler=function(u){let h=c.indexOf(u);return h!==-1&&c.splice(h,2),this},this.getHandler=function(u){for(let h=0,d=c.length;h<d;h+=2){let f=c[h],g=c[h+1];if(f.global&&(f.lastIndex=0),f.test(u))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},Sg=new dc,fc=class{constructor(t){this.manager=t!==void 0?t:Sg,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};fc.DEFAULT_MATERIAL_NAME="__DEFAULT";var pa=class extends kn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new le(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}};var Ou=new $e,Im=new X,Lm=new X,pc=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new re(512,512),this.mapType=ti,this.map=null,this.mapPass=null,this.matrix=new $e,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new zs,this._frameExtents=new re(1,1),this._viewportCount=1,this._viewports=[new Ye(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;Im.setFromMatrixPosition(t.matrixWorld),e.position.copy(Im),Lm.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(Lm),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){Ou.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(Ou,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===ro||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(Ou)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},Nl=new X,Ul=new di,qi=new X,ma=class extends kn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new $e,this.projectionMatrix=new $e,this.projectionMatrixInverse=new $e,this.coordinateSystem=bi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(Nl,Ul,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Nl,Ul,qi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(Nl,Ul,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Nl,Ul,qi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Os=new X,Dm=new re,Nm=new re,Zn=class extends ma{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=ao*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(Zo*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return ao*2*Math.atan(Math.tan(Zo*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Os.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Os.x,Os.y).multiplyScalar(-t/Os.z),Os.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Os.x,Os.y).multiplyScalar(-t/Os.z)}getViewSize(t,e){return this.getViewBounds(t,Dm,Nm),e.subVectors(Nm,Dm)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(Zo*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var ga=class extends ma{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=u*this.view.offsetY,l=a-u*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},Gu=class extends pc{constructor(){super(new ga(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},_a=class extends pa{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(kn.DEFAULT_UP),this.updateMatrix(),this.target=new kn,this.shadow=new Gu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}},xa=class extends pa{constructor(t,e){super(t,e),this.isAmbientLight=!0,this.type="AmbientLight"}};var eo=-90,no=1,fo=class extends kn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new Zn(eo,no,t,e);s.layers=this.layers,this.add(s);let r=new Zn(eo,no,t,e);r.layers=this.layers,this.add(r);let o=new Zn(eo,no,t,e);o.layers=this.layers,this.add(o);let a=new Zn(eo,no,t,e);a.layers=this.layers,this.add(a);let l=new Zn(eo,no,t,e);l.layers=this.layers,this.add(l);let c=new Zn(eo,no,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===bi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===ro)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,u]=this.children,h=t.getRenderTarget(),d=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let _=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let p=!1;t.isWebGLRenderer===!0?p=t.state.buffers.depth.getReversed():p=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=_,t.setRenderTarget(n,5,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,u),t.setRenderTarget(h,d,f),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},mc=class extends Zn{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var Md="\\[\\]\\.:\\/",By=new RegExp("["+Md+"]","g"),Sd="[^"+Md+"]",ky="[^"+Md.replace("\\.","")+"]",zy=/((?:WC+[\/:])*)/.source.replace("WC",Sd),Vy=/(WCOD+)?/.source.replace("WCOD",ky),Gy=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Sd),Hy=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Sd),Wy=new RegExp("^"+zy+Vy+Gy+Hy+"$"),Xy=["material","materials","bones","map"],Hu=class{constructor(t,e,n){let s=n||Xe.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},Xe=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(By,"")}static parseTrackName(t){let e=Wy.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);Xy.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Jt("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){se("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){se("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){se("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===c){c=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){se("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){se("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){se("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){se("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;se("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){se("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){se("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Xe.Composite=Hu;Xe.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Xe.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Xe.prototype.GetterByBindingType=[Xe.prototype._getValue_direct,Xe.prototype._getValue_array,Xe.prototype._getValue_arrayElement,Xe.prototype._getValue_toArray];Xe.prototype.SetterByBindingTypeAndVersioning=[[Xe.prototype._setValue_direct,Xe.prototype._setValue_direct_setNeedsUpdate,Xe.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Xe.prototype._setValue_array,Xe.prototype._setValue_array_setNeedsUpdate,Xe.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Xe.prototype._setValue_arrayElement,Xe.prototype._setValue_arrayElement_setNeedsUpdate,Xe.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Xe.prototype._setValue_fromArray,Xe.prototype._setValue_fromArray_setNeedsUpdate,Xe.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var sE=new Float32Array(1);var po=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=_e(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(_e(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Wu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var ya=class extends Di{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function wd(i,t,e,n){let s=$y(n);switch(e){case cd:return i*t;case ud:return i*t/s.components*s.byteLength;case Sc:return i*t/s.components*s.byteLength;case qs:return i*t*2/s.components*s.byteLength;case wc:return i*t*2/s.components*s.byteLength;case hd:return i*t*3/s.components*s.byteLength;case Bi:return i*t*4/s.components*s.byteLength;case Ec:return i*t*4/s.components*s.byteLength;case Ma:case Sa:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case wa:case Ea:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Ac:case Cc:return Math.max(i,16)*Math.max(t,8)/4;case Tc:case Rc:return Math.max(i,8)*Math.max(t,8)/2;case Pc:case Ic:case Dc:case Nc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Lc:case Ta:case Uc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Fc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Oc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case Bc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case kc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case zc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Vc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Gc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Hc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Wc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Xc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case $c:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case qc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Yc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case Zc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Jc:case jc:case Kc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case Qc:case th:return Math.ceil(i/4)*Math.ceil(t/4)*8;case Aa:case eh:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function $y(i){switch(i){case ti:case rd:return{byteLength:1,components:1};case xo:case od:case Oi:return{byteLength:2,components:1};case bc:case Mc:return{byteLength:2,components:4};case Ui:case vc:case Fi:return{byteLength:4,components:1};case ad:case ld:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Jt("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function Xg(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function Yy(i){let t=new WeakMap;function e(a,l){let c=a.array,u=a.usage,h=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,u),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:h}}function n(a,l,c){let u=l.array,h=l.updateRanges;if(i.bindBuffer(c,a),h.length===0)i.bufferSubData(c,0,u);else{h.sort((f,g)=>f.start-g.start);let d=0;for(let f=1;f<h.length;f++){let g=h[d],_=h[f];_.start<=g.start+g.count+1?g.count=Math.max(g.count,_.start+_.count-g.start):(++d,h[d]=_)}h.length=d+1;for(let f=0,g=h.length;f<g;f++){let _=h[f];i.bufferSubData(c,_.start*u.BYTES_PER_ELEMENT,u,_.start,_.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var Zy=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Jy=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,jy=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,Ky=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Qy=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,tv=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,ev=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,nv=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,iv=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,sv=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,rv=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,ov=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,av=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,lv=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,cv=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,hv=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,uv=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,dv=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,fv=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,pv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,mv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,gv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,_v=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,xv=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,yv=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,vv=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,bv=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,Mv=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Sv=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,wv="gl_FragColor = linearToOutputTexel( gl_FragColor );",Ev=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Tv=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,Av=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Rv=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,Cv=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Pv=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,Iv=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Lv=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Dv=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,Nv=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Uv=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,Fv=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Ov=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,Bv=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,kv=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,zv=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,Vv=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,Gv=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Hv=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,Wv=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,Xv=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,$v=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,qv=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,Yv=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,Zv=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,Jv=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,jv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Kv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Qv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,tb=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,eb=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,nb=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,ib=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,sb=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,rb=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,ob=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,ab=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,lb=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,cb=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,hb=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,ub=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,db=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,fb=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,pb=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,mb=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,gb=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,_b=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,xb=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,yb=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,vb=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,bb=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,Mb=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Sb=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,wb=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Eb=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,Tb=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,Ab=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Rb=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,Cb=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Pb=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,Ib=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,Lb=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,Db=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,Nb=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,Ub=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,Fb=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,Ob=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,Bb=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,kb=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,zb=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,Vb=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,Gb=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,Hb=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,Wb=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Xb=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,$b=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,qb=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,Yb=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,Zb=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Jb=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,jb=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Kb=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Qb=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,tM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,eM=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,nM=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,iM=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,sM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,rM=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,oM=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,aM=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,lM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,cM=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,hM=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,uM=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,dM=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,fM=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,pM=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,mM=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,gM=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,_M=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,xM=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,yM=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,vM=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,bM=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,MM=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,SM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,wM=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,EM=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,TM=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,AM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,pe={alphahash_fragment:Zy,alphahash_pars_fragment:Jy,alphamap_fragment:jy,alphamap_pars_fragment:Ky,alphatest_fragment:Qy,alphatest_pars_fragment:tv,aomap_fragment:ev,aomap_pars_fragment:nv,batching_pars_vertex:iv,batching_vertex:sv,begin_vertex:rv,beginnormal_vertex:ov,bsdfs:av,iridescence_fragment:lv,bumpmap_pars_fragment:cv,clipping_planes_fragment:hv,clipping_planes_pars_fragment:uv,clipping_planes_pars_vertex:dv,clipping_planes_vertex:fv,color_fragment:pv,color_pars_fragment:mv,color_pars_vertex:gv,color_vertex:_v,common:xv,defaultnormal_vertex:yv,displacementmap_pars_vertex:vv,displacementmap_vertex:bv,emissivemap_fragment:Mv,emissivemap_pars_fragment:Sv,colorspace_fragment:wv,colorspace_pars_fragment:Ev,envmap_fragment:Tv,envmap_common_pars_fragment:Av,envmap_pars_fragment:Rv,envmap_pars_vertex:Cv,envmap_physical_pars_fragment:zv,envmap_vertex:Pv,fog_vertex:Iv,fog_pars_vertex:Lv,fog_fragment:Dv,fog_pars_fragment:Nv,gradientmap_pars_fragment:Uv,lightmap_pars_fragment:Fv,lights_lambert_fragment:Ov,lights_lambert_pars_fragment:Bv,lights_pars_begin:kv,lights_toon_fragment:Vv,lights_toon_pars_fragment:Gv,lights_phong_fragment:Hv,lights_phong_pars_fragment:Wv,lights_physical_fragment:Xv,lights_physical_pars_fragment:$v,lights_fragment_begin:qv,lights_fragment_maps:Yv,lights_fragment_end:Zv,lightprobes_pars_fragment:Jv,logdepthbuf_fragment:jv,logdepthbuf_pars_fragment:Kv,logdepthbuf_pars_vertex:Qv,logdepthbuf_vertex:tb,map_fragment:eb,map_pars_fragment:nb,map_particle_fragment:ib,map_particle_pars_fragment:sb,metalnessmap_fragment:rb,metalnessmap_pars_fragment:ob,morphinstance_vertex:ab,morphcolor_vertex:lb,morphnormal_vertex:cb,morphtarget_pars_vertex:hb,morphtarget_vertex:ub,normal_fragment_begin:db,normal_fragment_maps:fb,normal_pars_fragment:pb,normal_pars_vertex:mb,normal_vertex:gb,normalmap_pars_fragment:_b,clearcoat_normal_fragment_begin:xb,clearcoat_normal_fragment_maps:yb,clearcoat_pars_fragment:vb,iridescence_pars_fragment:bb,opaque_fragment:Mb,packing:Sb,premultiplied_alpha_fragment:wb,project_vertex:Eb,dithering_fragment:Tb,dithering_pars_fragment:Ab,roughnessmap_fragment:Rb,roughnessmap_pars_fragment:Cb,shadowmap_pars_fragment:Pb,shadowmap_pars_vertex:Ib,shadowmap_vertex:Lb,shadowmask_pars_fragment:Db,skinbase_vertex:Nb,skinning_pars_vertex:Ub,skinning_vertex:Fb,skinnormal_vertex:Ob,specularmap_fragment:Bb,specularmap_pars_fragment:kb,tonemapping_fragment:zb,tonemapping_pars_fragment:Vb,transmission_fragment:Gb,transmission_pars_fragment:Hb,uv_pars_fragment:Wb,uv_pars_vertex:Xb,uv_vertex:$b,worldpos_vertex:qb,background_vert:Yb,background_frag:Zb,backgroundCube_vert:Jb,backgroundCube_frag:jb,cube_vert:Kb,cube_frag:Qb,depth_vert:tM,depth_frag:eM,distance_vert:nM,distance_frag:iM,equirect_vert:sM,equirect_frag:rM,linedashed_vert:oM,linedashed_frag:aM,meshbasic_vert:lM,meshbasic_frag:cM,meshlambert_vert:hM,meshlambert_frag:uM,meshmatcap_vert:dM,meshmatcap_frag:fM,meshnormal_vert:pM,meshnormal_frag:mM,meshphong_vert:gM,meshphong_frag:_M,meshphysical_vert:xM,meshphysical_frag:yM,meshtoon_vert:vM,meshtoon_frag:bM,points_vert:MM,points_frag:SM,shadow_vert:wM,shadow_frag:EM,sprite_vert:TM,sprite_frag:AM},Ot={common:{diffuse:{value:new le(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new oe},alphaMap:{value:null},alphaMapTransform:{value:new oe},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new oe}},envmap:{envMap:{value:null},envMapRotation:{value:new oe},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new oe}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new oe}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new oe},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new oe},normalScale:{value:new re(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new oe},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new oe}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new oe}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new oe}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new le(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new le(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new oe},alphaTest:{value:0},uvTransform:{value:new oe}},sprite:{diffuse:{value:new le(16777215)},opacity:{value:1},center:{value:new re(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new oe},alphaMap:{value:null},alphaMapTransform:{value:new oe},alphaTest:{value:0}}},Ki={basic:{uniforms:Vn([Ot.common,Ot.specularmap,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.fog]),vertexShader:pe.meshbasic_vert,fragmentShader:pe.meshbasic_frag},lambert:{uniforms:Vn([Ot.common,Ot.specularmap,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)},envMapIntensity:{value:1}}]),vertexShader:pe.meshlambert_vert,fragmentShader:pe.meshlambert_frag},phong:{uniforms:Vn([Ot.common,Ot.specularmap,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)},specular:{value:new le(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:pe.meshphong_vert,fragmentShader:pe.meshphong_frag},standard:{uniforms:Vn([Ot.common,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.roughnessmap,Ot.metalnessmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:pe.meshphysical_vert,fragmentShader:pe.meshphysical_frag},toon:{uniforms:Vn([Ot.common,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.gradientmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)}}]),vertexShader:pe.meshtoon_vert,fragmentShader:pe.meshtoon_frag},matcap:{uniforms:Vn([Ot.common,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.fog,{matcap:{value:null}}]),vertexShader:pe.meshmatcap_vert,fragmentShader:pe.meshmatcap_frag},points:{uniforms:Vn([Ot.points,Ot.fog]),vertexShader:pe.points_vert,fragmentShader:pe.points_frag},dashed:{uniforms:Vn([Ot.common,Ot.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:pe.linedashed_vert,fragmentShader:pe.linedashed_frag},depth:{uniforms:Vn([Ot.common,Ot.displacementmap]),vertexShader:pe.depth_vert,fragmentShader:pe.depth_frag},normal:{uniforms:Vn([Ot.common,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,{opacity:{value:1}}]),vertexShader:pe.meshnormal_vert,fragmentShader:pe.meshnormal_frag},sprite:{uniforms:Vn([Ot.sprite,Ot.fog]),vertexShader:pe.sprite_vert,fragmentShader:pe.sprite_frag},background:{uniforms:{uvTransform:{value:new oe},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:pe.background_vert,fragmentShader:pe.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new oe}},vertexShader:pe.backgroundCube_vert,fragmentShader:pe.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:pe.cube_vert,fragmentShader:pe.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:pe.equirect_vert,fragmentShader:pe.equirect_frag},distance:{uniforms:Vn([Ot.common,Ot.displacementmap,{referencePosition:{value:new X},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:pe.distance_vert,fragmentShader:pe.distance_frag},shadow:{uniforms:Vn([Ot.lights,Ot.fog,{color:{value:new le(0)},opacity:{value:1}}]),vertexShader:pe.shadow_vert,fragmentShader:pe.shadow_frag}};Ki.physical={uniforms:Vn([Ki.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new oe},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new oe},clearcoatNormalScale:{value:new re(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new oe},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new oe},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new oe},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new oe},sheen:{value:0},sheenColor:{value:new le(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new oe},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new oe},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new oe},transmissionSamplerSize:{value:new re},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new oe},attenuationDistance:{value:0},attenuationColor:{value:new le(0)},specularColor:{value:new le(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new oe},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new oe},anisotropyVector:{value:new re},anisotropyMap:{value:null},anisotropyMapTransform:{value:new oe}}]),vertexShader:pe.meshphysical_vert,fragmentShader:pe.meshphysical_frag};var ih={r:0,b:0,g:0},RM=new $e,$g=new oe;$g.set(-1,0,0,0,1,0,0,0,1);function CM(i,t,e,n,s,r){let o=new le(0),a=s===!0?0:1,l,c,u=null,h=0,d=null;function f(y){let E=y.isScene===!0?y.background:null;if(E&&E.isTexture){let b=y.backgroundBlurriness>0;E=t.get(E,b)}return E}function g(y){let E=!1,b=f(y);b===null?p(o,a):b&&b.isColor&&(p(b,1),E=!0);let C=i.xr.getEnvironmentBlendMode();C==="additive"?e.buffers.color.setClear(0,0,0,1,r):C==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||E)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function _(y,E){let b=f(E);b&&b.isCubeTexture?(c===void 0&&(c=new Pn(new uo(1,1,1),new Zi({name:"BackgroundCubeMaterial",uniforms:xr(Ki.backgroundCube.uniforms),vertexShader:Ki.backgroundCube.vertexShader,fragmentShader:Ki.backgroundCube.fragmentShader,side:Dn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(C,w,x){this.matrixWorld.copyPosition(x.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=b,c.material.uniforms.backgroundBlurriness.value=E.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=E.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(RM.makeRotationFromEuler(E.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply($g),c.material.toneMapped=be.getTransfer(b.colorSpace)!==Ie,(u!==b||h!==b.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,u=b,h=b.version,d=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null)):b&&b.isTexture&&(l===void 0&&(l=new Pn(new fr(2,2),new Zi({name:"BackgroundMaterial",uniforms:xr(Ki.background.uniforms),vertexShader:Ki.background.vertexShader,fragmentShader:Ki.background.fragmentShader,side:Ni,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=b,l.material.uniforms.backgroundIntensity.value=E.backgroundIntensity,l.material.toneMapped=be.getTransfer(b.colorSpace)!==Ie,b.matrixAutoUpdate===!0&&b.updateMatrix(),l.material.uniforms.uvTransform.value.copy(b.matrix),(u!==b||h!==b.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,u=b,h=b.version,d=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null))}function p(y,E){y.getRGB(ih,bd(i)),e.buffers.color.setClear(ih.r,ih.g,ih.b,E,r)}function m(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,E=1){o.set(y),a=E,p(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,p(o,a)},render:g,addToRenderList:_,dispose:m}}function PM(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,o=!1;function a(R,U,V,P,F){let H=!1,O=h(R,P,V,U);r!==O&&(r=O,c(r.object)),H=f(R,P,V,F),H&&g(R,P,V,F),F!==null&&t.update(F,i.ELEMENT_ARRAY_BUFFER),(H||o)&&(o=!1,b(R,U,V,P),F!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(F).buffer))}function l(){return i.createVertexArray()}function c(R){return i.bindVertexArray(R)}function u(R){return i.deleteVertexArray(R)}function h(R,U,V,P){let F=P.wireframe===!0,H=n[U.id];H===void 0&&(H={},n[U.id]=H);let O=R.isInstancedMesh===!0?R.id:0,st=H[O];st===void 0&&(st={},H[O]=st);let Z=st[V.id];Z===void 0&&(Z={},st[V.id]=Z);let j=Z[F];return j===void 0&&(j=d(l()),Z[F]=j),j}function d(R){let U=[],V=[],P=[];for(let F=0;F<e;F++)U[F]=0,V[F]=0,P[F]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:U,enabledAttributes:V,attributeDivisors:P,object:R,attributes:{},index:null}}function f(R,U,V,P){let F=r.attributes,H=U.attributes,O=0,st=V.getAttributes();for(let Z in st)if(st[Z].location>=0){let tt=F[Z],ct=H[Z];if(ct===void 0&&(Z==="instanceMatrix"&&R.instanceMatrix&&(ct=R.instanceMatrix),Z==="instanceColor"&&R.instanceColor&&(ct=R.instanceColor)),tt===void 0||tt.attribute!==ct||ct&&tt.data!==ct.data)return!0;O++}return r.attributesNum!==O||r.index!==P}function g(R,U,V,P){let F={},H=U.attributes,O=0,st=V.getAttributes();for(let Z in st)if(st[Z].location>=0){let tt=H[Z];tt===void 0&&(Z==="instanceMatrix"&&R.instanceMatrix&&(tt=R.instanceMatrix),Z==="instanceColor"&&R.instanceColor&&(tt=R.instanceColor));let ct={};ct.attribute=tt,tt&&tt.data&&(ct.data=tt.data),F[Z]=ct,O++}r.attributes=F,r.attributesNum=O,r.index=P}function _(){let R=r.newAttributes;for(let U=0,V=R.length;U<V;U++)R[U]=0}function p(R){m(R,0)}function m(R,U){let V=r.newAttributes,P=r.enabledAttributes,F=r.attributeDivisors;V[R]=1,P[R]===0&&(i.enableVertexAttribArray(R),P[R]=1),F[R]!==U&&(i.vertexAttribDivisor(R,U),F[R]=U)}function y(){let R=r.newAttributes,U=r.enabledAttributes;for(let V=0,P=U.length;V<P;V++)U[V]!==R[V]&&(i.disableVertexAttribArray(V),U[V]=0)}function E(R,U,V,P,F,H,O){O===!0?i.vertexAttribIPointer(R,U,V,F,H):i.vertexAttribPointer(R,U,V,P,F,H)}function b(R,U,V,P){_();let F=P.attributes,H=V.getAttributes(),O=U.defaultAttributeValues;for(let st in H){let Z=H[st];if(Z.location>=0){let j=F[st];if(j===void 0&&(st==="instanceMatrix"&&R.instanceMatrix&&(j=R.instanceMatrix),st==="instanceColor"&&R.instanceColor&&(j=R.instanceColor)),j!==void 0){let tt=j.normalized,ct=j.itemSize,at=t.get(j);if(at===void 0)continue;let $=at.buffer,dt=at.type,pt=at.bytesPerElement,vt=dt===i.INT||dt===i.UNSIGNED_INT||j.gpuType===vc;if(j.isInterleavedBufferAttribute){let bt=j.data,_t=bt.isInterleavedBuffer===!0?bt.stride:bt.itemSize,Nt=j.offset;if(bt.isInstancedInterleavedBuffer||bt.isInstancedBufferAttribute){for(let Ut=0;Ut<Z.locationSize;Ut++)m(Z.location+Ut,bt.meshPerAttribute);R.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=bt.meshPerAttribute*bt.count)}else for(let Ut=0;Ut<Z.locationSize;Ut++)p(Z.location+Ut);i.bindBuffer(i.ARRAY_BUFFER,$);for(let Ut=0;Ut<Z.locationSize;Ut++)E(Z.location+Ut,ct/Z.locationSize,dt,tt,_t*pt,(Nt+ct/Z.locationSize*Ut)*pt,vt)}else{if(j.isInstancedBufferAttribute){for(let bt=0;bt<Z.locationSize;bt++)m(Z.location+bt,j.meshPerAttribute);R.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=j.meshPerAttribute*j.count)}else for(let bt=0;bt<Z.locationSize;bt++)p(Z.location+bt);i.bindBuffer(i.ARRAY_BUFFER,$);for(let bt=0;bt<Z.locationSize;bt++)E(Z.location+bt,ct/Z.locationSize,dt,tt,ct*pt,ct/Z.locationSize*bt*pt,vt)}}else if(O!==void 0){let tt=O[st];if(tt!==void 0)switch(tt.length){case 2:i.vertexAttrib2fv(Z.location,tt);break;case 3:i.vertexAttrib3fv(Z.location,tt);break;case 4:i.vertexAttrib4fv(Z.location,tt);break;default:i.vertexAttrib1fv(Z.location,tt)}}}}y()}function C(){z();for(let R in n){let U=n[R];for(let V in U){let P=U[V];for(let F in P){let H=P[F];for(let O in H)u(H[O].object),delete H[O];delete P[F]}}delete n[R]}}function w(R){if(n[R.id]===void 0)return;let U=n[R.id];for(let V in U){let P=U[V];for(let F in P){let H=P[F];for(let O in H)u(H[O].object),delete H[O];delete P[F]}}delete n[R.id]}function x(R){for(let U in n){let V=n[U];for(let P in V){let F=V[P];if(F[R.id]===void 0)continue;let H=F[R.id];for(let O in H)u(H[O].object),delete H[O];delete F[R.id]}}}function S(R){for(let U in n){let V=n[U],P=R.isInstancedMesh===!0?R.id:0,F=V[P];if(F!==void 0){for(let H in F){let O=F[H];for(let st in O)u(O[st].object),delete O[st];delete F[H]}delete V[P],Object.keys(V).length===0&&delete n[U]}}}function z(){I(),o=!0,r!==s&&(r=s,c(r.object))}function I(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:z,resetDefaultState:I,dispose:C,releaseStatesOfGeometry:w,releaseStatesOfObject:S,releaseStatesOfProgram:x,initAttributes:_,enableAttribute:p,disableUnusedAttributes:y}}function IM(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,u){u!==0&&(i.drawArraysInstanced(n,l,c,u),e.update(c,n,u))}function a(l,c,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,u);let d=0;for(let f=0;f<u;f++)d+=c[f];e.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function LM(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let x=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(x.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(x){return!(x!==Bi&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(x){let S=x===Oi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(x!==ti&&x!==Fi&&!S&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(x){if(x==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";x="mediump"}return x==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",u=l(c);u!==c&&(Jt("WebGLRenderer:",c,"not supported, using",u,"instead."),c=u);let h=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),d=e.logarithmicDepthBuffer===!0&&h===!1;e.reversedDepthBuffer===!0&&h===!1&&Jt("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&h===!0&&Jt("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_TEXTURE_SIZE),p=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),m=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),E=i.getParameter(i.MAX_VARYING_VECTORS),b=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),C=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:h,maxTextures:f,maxVertexTextures:g,maxTextureSize:_,maxCubemapSize:p,maxAttributes:m,maxVertexUniforms:y,maxVaryings:E,maxFragmentUniforms:b,maxSamples:C,samples:w}}function DM(i){let t=this,e=null,n=0,s=!1,r=!1,o=new Yn,a=new oe,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(h,d){let f=h.length!==0||d||n!==0||s;return s=d,n=h.length,f},this.beginShadows=function(){r=!0,u(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(h,d){e=u(h,d,0)},this.setState=function(h,d,f){let g=h.clippingPlanes,_=h.clipIntersection,p=h.clipShadows,m=i.get(h);if(!s||g===null||g.length===0||r&&!p)r?u(null):c();else{let y=r?0:n,E=y*4,b=m.clippingState||null;l.value=b,b=u(g,d,E,f);for(let C=0;C!==E;++C)b[C]=e[C];m.clippingState=b,this.numIntersection=_?this.numPlanes:0,this.numPlanes+=y}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function u(h,d,f,g){let _=h!==null?h.length:0,p=null;if(_!==0){if(p=l.value,g!==!0||p===null){let m=f+_*4,y=d.matrixWorldInverse;a.getNormalMatrix(y),(p===null||p.length<m)&&(p=new Float32Array(m));for(let E=0,b=f;E!==_;++E,b+=4)o.copy(h[E]).applyMatrix4(y,a),o.normal.toArray(p,b),p[b+3]=o.constant}l.value=p,l.needsUpdate=!0}return t.numPlanes=_,t.numIntersection=0,p}}var Pa=class extends fi{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new la(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new uo(5,5,5),r=new Zi({name:"CubemapFromEquirect",uniforms:xr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Dn,blending:pr});r.uniforms.tEquirect.value=e;let o=new Pn(s,r),a=e.minFilter;return e.minFilter===ys&&(e.minFilter=Jn),new fo(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},wg=256,NM=3,UM=20,qg=256,Yg=16,FM=3,OM=new X,BM=new le,rh=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new fo(1,10,null),this._boxMesh=new Pn(new uo(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=OM}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),u=this._getSourceTarget(!0);e>0&&(u.texture.mipmapsAutoUpdate=!1);let h=l.autoClear,d=l.autoClearColor,f=l.autoClearDepth,g=l.autoClearStencil,_=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,_===null&&(t.background=l.getClearColor(BM));let p=new fo(n,s,u);return p.position.copy(a),p.update(l,t),l.autoClear=h,l.autoClearColor=d,l.autoClearDepth=f,l.autoClearStencil=g,t.background=_,e>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Ag(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Tg(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(wg,xd(t))}_fromTexture(t,e){t.mapping===gr||t.mapping===_o?this._setSize(t.image.length===0?wg:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=Eg(t,!1,!1),n=Math.log2(t)-NM;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=Eg(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===gr||t.mapping===_o?(this._cubemapMaterial===null&&(this._cubemapMaterial=Ag()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Tg()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=kM(),this._integrationMaterial=zM());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Yg);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-FM)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(qg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=VM());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function Eg(i,t,e){return new Pa(i,{minFilter:ys,generateMipmaps:t,type:Oi,colorSpace:Ko,depthBuffer:e})}function Ia(i,t,e){return new Zi({name:i,uniforms:t,vertexShader:pe.cube_vert,fragmentShader:e,side:Dn,blending:pr,depthTest:!1,depthWrite:!1})}function kM(){return Ia("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${qg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function zM(){return Ia("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Yg}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function VM(){return Ia("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${UM}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Tg(){return Ia("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function Ag(){return Ia("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function GM(i){let t=new WeakMap,e=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?o(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===_c||f===xc)if(t.has(d)){let g=t.get(d).texture;return a(g,d.mapping)}else{let g=d.image;if(g&&g.height>0){let _=new Pa(g.height);return _.fromEquirectangularTexture(i,d),t.set(d,_),d.addEventListener("dispose",c),a(_.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,g=f===_c||f===xc,_=f===gr||f===_o;if(g||_){let p=e.get(d),m=p!==void 0?p.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==m)return n===null&&(n=new rh(i)),p=g?n.fromEquirectangular(d,p):n.fromCubemap(d,p),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),p.texture;if(p!==void 0)return p.texture;{let y=d.image;return g&&y&&y.height>0||_&&y&&l(y)?(n===null&&(n=new rh(i)),p=g?n.fromEquirectangular(d):n.fromCubemap(d),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),d.addEventListener("dispose",u),p.texture):null}}}return d}function a(d,f){return f===_c?d.mapping=gr:f===xc&&(d.mapping=_o),d}function l(d){let f=0,g=6;for(let _=0;_<g;_++)d[_]!==void 0&&f++;return f===g}function c(d){let f=d.target;f.removeEventListener("dispose",c);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function u(d){let f=d.target;f.removeEventListener("dispose",u);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function h(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:h}}function HM(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Yo("WebGLRenderer: "+n+" extension not supported."),s}}}function WM(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){l(g.target)}function l(g){g.index!==null&&t.remove(g.index);for(let p in g.attributes)t.remove(g.attributes[p]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let _=r.get(g);_&&(t.remove(_),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function c(g,_){return s[_.id]!==void 0||(_.addEventListener("dispose",a),s[_.id]=new WeakRef(_),o.register(_,_.id,_),e.memory.geometries++),_}function u(g){let _=g.attributes;for(let p in _)t.update(_[p],i.ARRAY_BUFFER)}function h(g){let _=g.index,p=g.attributes.position,m=0;if(p===void 0)return;let y=_!==null?_.array.length:p.array.length/3-1,E=p.count>=65535?ra:sa,b=new E(Math.ceil(y/3)*6,1),C=b.array;if(_!==null){let x=_.array;m=_.version;for(let S=0,z=0;S<y;S+=3){let I=x[S+0],R=x[S+1],U=x[S+2];C[z++]=I,C[z++]=R,C[z++]=R,C[z++]=U,C[z++]=U,C[z++]=I}}else{m=p.version;for(let x=0,S=0;x<y;x+=3){let z=x+0,I=x+1,R=x+2;C[S++]=z,C[S++]=I,C[S++]=I,C[S++]=R,C[S++]=R,C[S++]=z}}b.version=m;let w=r.get(g);w&&t.remove(w),r.set(g,b)}function d(g){let _=r.get(g);if(_){let p=g.index;p!==null&&_.version<p.version&&h(g)}else h(g);return r.get(g)}function f(){for(let g in s){let _=s[g].deref();_!==void 0&&l(_)}}return{get:c,update:u,getWireframeAttribute:d,dispose:f}}function XM(i,t,e){let n;function s(h){n=h}let r,o;function a(h){r=h.type,o=h.bytesPerElement}function l(h,d){i.drawElements(n,d,r,h*o),e.update(d,n,1)}function c(h,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,h*o,f),e.update(d,n,f))}function u(h,d,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,h,0,f);let _=0;for(let p=0;p<f;p++)_+=d[p];e.update(_,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=u}function $M(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:se("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function qM(i,t,e){let n=new WeakMap,s=new Ye;function r(o,a,l){let c=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,h=u!==void 0?u.length:0,d=n.get(a);if(d===void 0||d.count!==h){let z=function(){x.dispose(),n.delete(a),a.removeEventListener("dispose",z)};d!==void 0&&d.texture.dispose();let f=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,_=a.morphAttributes.color!==void 0,p=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],E=0;f===!0&&(E=1),g===!0&&(E=2),_===!0&&(E=3);let b=a.attributes.position.count*E,C=1;b>t.maxTextureSize&&(C=Math.ceil(b/t.maxTextureSize),b=t.maxTextureSize);let w=new Float32Array(b*C*4*h),x=new ea(w,b,C,h);x.type=Fi,x.needsUpdate=!0;let S=E*4;for(let I=0;I<h;I++){let R=p[I],U=m[I],V=y[I],P=b*C*4*I;for(let F=0;F<R.count;F++){let H=F*S;f===!0&&(s.fromBufferAttribute(R,F),w[P+H+0]=s.x,w[P+H+1]=s.y,w[P+H+2]=s.z,w[P+H+3]=0),g===!0&&(s.fromBufferAttribute(U,F),w[P+H+4]=s.x,w[P+H+5]=s.y,w[P+H+6]=s.z,w[P+H+7]=0),_===!0&&(s.fromBufferAttribute(V,F),w[P+H+8]=s.x,w[P+H+9]=s.y,w[P+H+10]=s.z,w[P+H+11]=V.itemSize===4?s.w:1)}}d={count:h,texture:x,size:new re(b,C)},n.set(a,d),a.addEventListener("dispose",z)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let _=0;_<c.length;_++)f+=c[_];let g=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function YM(i,t,e,n,s){let r=new WeakMap;function o(c){let u=s.render.frame,h=c.geometry,d=t.get(c,h);if(r.get(d)!==u&&(t.update(d),r.set(d,u)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==u&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,u))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==u&&(f.update(),r.set(f,u))}return d}function a(){r=new WeakMap}function l(c){let u=c.target;u.removeEventListener("dispose",l),n.releaseStatesOfObject(u),e.remove(u.instanceMatrix),u.instanceColor!==null&&e.remove(u.instanceColor)}return{update:o,dispose:a}}var ZM={[ju]:"LINEAR_TONE_MAPPING",[Ku]:"REINHARD_TONE_MAPPING",[Qu]:"CINEON_TONE_MAPPING",[td]:"ACES_FILMIC_TONE_MAPPING",[nd]:"AGX_TONE_MAPPING",[id]:"NEUTRAL_TONE_MAPPING",[ed]:"CUSTOM_TONE_MAPPING"};function JM(i,t,e,n,s,r){let o=new fi(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,u=new zn;u.setAttribute("position",new Ln([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new Ln([0,2,0,0,2,0],2));let h=new ec({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new Pn(u,h),f=new ga(-1,1,1,-1,0,1),g=null,_=null,p=!1,m,y=null,E=[],b=!1;this.setSize=function(C,w){o.setSize(C,w),a!==null&&a.setSize(C,w),l!==null&&l.setSize(C,w);for(let x=0;x<E.length;x++){let S=E[x];S.setSize&&S.setSize(C,w)}},this.setEffects=function(C){E=C,b=E.length>0&&E[0].isRenderPass===!0;let w=o.width,x=o.height;E.length>0&&a===null&&(a=new fi(w,x,{type:Oi,depthBuffer:!1,stencilBuffer:!1}),l=new fi(w,x,{type:Oi,depthBuffer:!1,stencilBuffer:!1}));let S=s===!0&&E.some(z=>z.needsDepthTexture===!0);S!==(o.depthTexture!==null)&&(S===!0&&c===null&&(c=new xs(w,x),r===!0&&(c.format=vs,c.type=_r)),o.dispose(),o.depthTexture=S?c:null,o.resolveDepthBuffer=S,o.storeMultisampledDepthBuffer=S);for(let z=0;z<E.length;z++){let I=E[z];I.setSize&&I.setSize(w,x),S&&I.needsDepthTexture===!0&&I.setDepthTexture&&I.setDepthTexture(c)}},this.begin=function(C,w){if(p||C.toneMapping===Ji&&E.length===0)return!1;if(y=w,w!==null){let x=w.width,S=w.height;(o.width!==x||o.height!==S)&&this.setSize(x,S)}return b===!1&&C.setRenderTarget(o),m=C.toneMapping,C.toneMapping=Ji,!0},this.hasRenderPass=function(){return b},this.end=function(C,w){C.toneMapping=m,p=!0;let x=o,S=a;for(let z=0;z<E.length;z++){let I=E[z];I.enabled!==!1&&(I.render(C,S,x,w),I.needsSwap!==!1&&(x=S,S=S===a?l:a))}if(g!==C.outputColorSpace||_!==C.toneMapping){g=C.outputColorSpace,_=C.toneMapping,h.defines={},be.getTransfer(g)===Ie&&(h.defines.SRGB_TRANSFER="");let z=ZM[_];z&&(h.defines[z]=""),h.needsUpdate=!0}h.uniforms.tDiffuse.value=x.texture,C.setRenderTarget(y),C.render(d,f),y=null,p=!1},this.isCompositing=function(){return p},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),u.dispose(),h.dispose()}}var Zg=new Qn,Jg=new xs(1,1),jg=new ca(1),Kg=new ea,Qg=new Jl,t0=new la,Rg=[],Cg=[],Pg=new Float32Array(16),Ig=new Float32Array(9),Lg=new Float32Array(4);function bo(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=Rg[s];if(r===void 0&&(r=new Float32Array(s),Rg[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function yn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function vn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function ah(i,t){let e=Cg[t];e===void 0&&(e=new Int32Array(t),Cg[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function jM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function KM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2fv(this.addr,t),vn(e,t)}}function QM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(yn(e,t))return;i.uniform3fv(this.addr,t),vn(e,t)}}function tS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4fv(this.addr,t),vn(e,t)}}function eS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;Lg.set(n),i.uniformMatrix2fv(this.addr,!1,Lg),vn(e,n)}}function nS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;Ig.set(n),i.uniformMatrix3fv(this.addr,!1,Ig),vn(e,n)}}function iS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;Pg.set(n),i.uniformMatrix4fv(this.addr,!1,Pg),vn(e,n)}}function sS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function rS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2iv(this.addr,t),vn(e,t)}}function oS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3iv(this.addr,t),vn(e,t)}}function aS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4iv(this.addr,t),vn(e,t)}}function lS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function cS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2uiv(this.addr,t),vn(e,t)}}function hS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3uiv(this.addr,t),vn(e,t)}}function uS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4uiv(this.addr,t),vn(e,t)}}function lh(i){return i.version===0&&(i.compareFunction=pd,i.needsUpdate=!0),i}function dS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=lh(Jg):r=Zg,e.setTexture2D(t||r,s)}function fS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||Qg,s)}function pS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=lh(jg):r=t0,e.setTextureCube(t||r,s)}function mS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||Kg,s)}function gS(i){switch(i){case 5126:return jM;case 35664:return KM;case 35665:return QM;case 35666:return tS;case 35674:return eS;case 35675:return nS;case 35676:return iS;case 5124:case 35670:return sS;case 35667:case 35671:return rS;case 35668:case 35672:return oS;case 35669:case 35673:return aS;case 5125:return lS;case 36294:return cS;case 36295:return hS;case 36296:return uS;case 35678:case 36198:case 36298:case 36306:case 35682:return dS;case 35679:case 36299:case 36307:return fS;case 35680:case 36300:case 36308:case 36293:return pS;case 36289:case 36303:case 36311:case 36292:return mS}}function _S(i,t){i.uniform1fv(this.addr,t)}function xS(i,t){let e=bo(t,this.size,2);i.uniform2fv(this.addr,e)}function yS(i,t){let e=bo(t,this.size,3);i.uniform3fv(this.addr,e)}function vS(i,t){let e=bo(t,this.size,4);i.uniform4fv(this.addr,e)}function bS(i,t){let e=bo(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function MS(i,t){let e=bo(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function SS(i,t){let e=bo(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function wS(i,t){i.uniform1iv(this.addr,t)}function ES(i,t){i.uniform2iv(this.addr,t)}function TS(i,t){i.uniform3iv(this.addr,t)}function AS(i,t){i.uniform4iv(this.addr,t)}function RS(i,t){i.uniform1uiv(this.addr,t)}function CS(i,t){i.uniform2uiv(this.addr,t)}function PS(i,t){i.uniform3uiv(this.addr,t)}function IS(i,t){i.uniform4uiv(this.addr,t)}function LS(i,t,e){let n=this.cache,s=t.length,r=ah(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=lh(Jg):o=Zg;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function DS(i,t,e){let n=this.cache,s=t.length,r=ah(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||Qg,r[o])}function NS(i,t,e){let n=this.cache,s=t.length,r=ah(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=lh(jg):o=t0;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function US(i,t,e){let n=this.cache,s=t.length,r=ah(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||Kg,r[o])}function FS(i){switch(i){case 5126:return _S;case 35664:return xS;case 35665:return yS;case 35666:return vS;case 35674:return bS;case 35675:return MS;case 35676:return SS;case 5124:case 35670:return wS;case 35667:case 35671:return ES;case 35668:case 35672:return TS;case 35669:case 35673:return AS;case 5125:return RS;case 36294:return CS;case 36295:return PS;case 36296:return IS;case 35678:case 36198:case 36298:case 36306:case 35682:return LS;case 35679:case 36299:case 36307:return DS;case 35680:case 36300:case 36308:case 36293:return NS;case 36289:case 36303:case 36311:case 36292:return US}}var Ad=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=gS(e.type)}},Rd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=FS(e.type)}},Cd=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},Ed=/(\w+)(\])?(\[|\.)?/g;function Dg(i,t){i.seq.push(t),i.map[t.id]=t}function OS(i,t,e){let n=i.name,s=n.length;for(Ed.lastIndex=0;;){let r=Ed.exec(n),o=Ed.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){Dg(e,c===void 0?new Ad(a,i,t):new Rd(a,i,t));break}else{let h=e.map[a];h===void 0&&(h=new Cd(a),Dg(e,h)),e=h}}}var vo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);OS(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function Ng(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var BS=37297,kS=0;function zS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var Ug=new oe;function VS(i){be._getMatrix(Ug,be.workingColorSpace,i);let t=`mat3( ${Ug.elements.map(e=>e.toFixed(4))} )`;switch(be.getTransfer(i)){case Qo:return[t,"LinearTransferOETF"];case Ie:return[t,"sRGBTransferOETF"];default:return Jt("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function Fg(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+zS(i.getShaderSource(t),a)}else return r}function GS(i,t){let e=VS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var HS={[ju]:"Linear",[Ku]:"Reinhard",[Qu]:"Cineon",[td]:"ACESFilmic",[nd]:"AgX",[id]:"Neutral",[ed]:"Custom"};function WS(i,t){let e=HS[t];return e===void 0?(Jt("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var sh=new X;function XS(){be.getLuminanceCoefficients(sh);let i=sh.x.toFixed(4),t=sh.y.toFixed(4),e=sh.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function $S(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Ca).join(`
`)}function qS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function YS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Ca(i){return i!==""}function Og(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function Bg(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var ZS=/^[ \t]*#include +<([\w\d./]+)>/gm;function Pd(i){return i.replace(ZS,JS)}function JS(i,t){let e=pe[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return Pd(e)}var jS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function kg(i){return i.replace(jS,KS)}function KS(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function zg(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var QS={[va]:"SHADOWMAP_TYPE_PCF",[mo]:"SHADOWMAP_TYPE_VSM"};function tw(i){return QS[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var ew={[_o]:"ENVMAP_MODE_REFRACTION"};function nw(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":ew[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var iw={[gc]:"ENVMAP_BLENDING_MULTIPLY",[ng]:"ENVMAP_BLENDING_MIX",[ig]:"ENVMAP_BLENDING_ADD"};function sw(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":iw[i.combine]||"ENVMAP_BLENDING_NONE"}function rw(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=tw(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=nw(e),h=sw(e),d=$S(e),f=qS(r),g=s.createProgram(),_,p,m=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(_=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Ca).join(`
`),_.length>0&&(_+=`
`),p=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Ca).join(`
`),p.length>0&&(p+=`
`)):(_=[zg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+u:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Ca).join(`
`),p=[zg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+u:"",e.envMap?"#define "+h:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Ji?"#define TONE_MAPPING":"",e.toneMapping!==Ji?pe.tonemapping_pars_fragment:"",e.toneMapping!==Ji?WS("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",pe.colorspace_pars_fragment,GS("linearToOutputTexel",e.outputColorSpace),XS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Ca).join(`
`)),o=Pd(o),o=Og(o,e),o=Bg(o,e),a=Pd(a),a=Og(a,e),a=Bg(a,e),o=kg(o),a=kg(a),e.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,_=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+_,p=["#define varying in",e.glslVersion===md?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===md?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+p);let y=m+_+o,E=m+p+a,b=Ng(s,s.VERTEX_SHADER,y),C=Ng(s,s.FRAGMENT_SHADER,E);s.attachShader(g,b),s.attachShader(g,C),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function w(I){if(i.debug.checkShaderErrors){let R=s.getProgramInfoLog(g)||"",U=s.getShaderInfoLog(b)||"",V=s.getShaderInfoLog(C)||"",P=R.trim(),F=U.trim(),H=V.trim(),O=!0,st=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(O=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,b,C);else{let Z=Fg(s,b,"vertex"),j=Fg(s,C,"fragment");se("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+I.name+`
Material Type: `+I.type+`

Program Info Log: `+P+`
`+Z+`
`+j)}else P!==""?Jt("WebGLProgram: Program Info Log:",P):(F===""||H==="")&&(st=!1);st&&(I.diagnostics={runnable:O,programLog:P,vertexShader:{log:F,prefix:_},fragmentShader:{log:H,prefix:p}})}s.deleteShader(b),s.deleteShader(C),x=new vo(s,g),S=YS(s,g)}let x;this.getUniforms=function(){return x===void 0&&w(this),x};let S;this.getAttributes=function(){return S===void 0&&w(this),S};let z=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return z===!1&&(z=s.getProgramParameter(g,BS)),z},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=kS++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=b,this.fragmentShader=C,this}var ow=0,Id=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new Ld(t),e.set(t,n)),n}},Ld=class{constructor(t){this.id=ow++,this.code=t,this.usedTimes=0}};function aw(i){return i===qs||i===Ta||i===Aa}function lw(i,t,e,n,s,r){let o=new na,a=new Id,l=new Set,c=[],u=new Map,h=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(x){return l.add(x),x===0?"uv":`uv${x}`}function g(x,S,z,I,R,U){let V=I.fog,P=R.geometry,F=x.isMeshStandardMaterial||x.isMeshLambertMaterial||x.isMeshPhongMaterial?I.environment:null,H=x.isMeshStandardMaterial||x.isMeshLambertMaterial&&!x.envMap||x.isMeshPhongMaterial&&!x.envMap,O=t.get(x.envMap||F,H),st=d[x.type],Z=n.precision;x.precision!==null&&(Z=n.getMaxPrecision(x.precision),Z!==x.precision&&Jt("WebGLProgram.getParameters:",x.precision,"not supported, using",Z,"instead."));let j=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,tt=j!==void 0?j.length:0,ct=0;P.morphAttributes.position!==void 0&&(ct=1),P.morphAttributes.normal!==void 0&&(ct=2),P.morphAttributes.color!==void 0&&(ct=3);let at,$,dt,pt;if(st){let It=Ki[st];at=It.vertexShader,$=It.fragmentShader}else{at=x.vertexShader,$=x.fragmentShader;let It=a.getVertexShaderStage(x),ue=a.getFragmentShaderStage(x);a.update(x,It,ue),dt=It.id,pt=ue.id}let vt=i.getRenderTarget(),bt=i.state.buffers.depth.getReversed(),_t=R.isInstancedMesh===!0,Nt=R.isBatchedMesh===!0,Ut=!!x.map,ee=!!x.matcap,he=!!O,ne=he&&O.isPMREMTexture===!0,Re=!!x.aoMap,Ce=!!x.lightMap,on=!!x.bumpMap&&x.wireframe===!1,Ue=!!x.normalMap,Mn=!!x.displacementMap,Me=!!x.emissiveMap,mn=!!x.metalnessMap,Je=!!x.roughnessMap,an=x.anisotropy>0,k=x.clearcoat>0,Lt=x.diffuseRoughness>0,jt=x.dispersion>0,ce=x.retroreflectivity>0,At=x.iridescence>0,Oe=x.sheen>0,Xt=x.transmission>0,Zt=an&&!!x.anisotropyMap,L=k&&!!x.clearcoatMap,M=k&&!!x.clearcoatNormalMap,Y=k&&!!x.clearcoatRoughnessMap,mt=Lt&&!!x.diffuseRoughnessMap,lt=At&&!!x.iridescenceMap,St=At&&!!x.iridescenceThicknessMap,wt=Oe&&!!x.sheenColorMap,nt=Oe&&!!x.sheenRoughnessMap,rt=!!x.specularMap,yt=!!x.specularColorMap,B=!!x.specularIntensityMap,ot=Xt&&!!x.transmissionMap,it=Xt&&!!x.thicknessMap,Rt=!!x.gradientMap,Mt=!!x.alphaMap,Tt=x.alphaTest>0,$t=!!x.alphaHash,Qt=!!x.extensions,ft=Ji;x.toneMapped&&(vt===null||vt.isXRRenderTarget===!0)&&(ft=i.toneMapping);let Gt=ne?O.isCompressedCubeTexture?O.image[0].mipmaps:O.mipmaps:null,te={shaderID:st,shaderType:x.type,shaderName:x.name,vertexShader:at,fragmentShader:$,defines:x.defines,customVertexShaderID:dt,customFragmentShaderID:pt,isRawShaderMaterial:x.isRawShaderMaterial===!0,glslVersion:x.glslVersion,precision:Z,batching:Nt,batchingColor:Nt&&R._colorsTexture!==null,instancing:_t,instancingColor:_t&&R.instanceColor!==null,instancingMorph:_t&&R.morphTexture!==null,outputColorSpace:vt===null?i.outputColorSpace:vt.isXRRenderTarget===!0?vt.texture.colorSpace:be.workingColorSpace,alphaToCoverage:!!x.alphaToCoverage,map:Ut,matcap:ee,envMap:he,envMapMode:he&&O.mapping,envMapPMREM:ne,envMapMaxLod:ne?Gt.length-1:null,envMapSize:ne?Gt[0].width:null,aoMap:Re,lightMap:Ce,bumpMap:on,normalMap:Ue,displacementMap:Mn,emissiveMap:Me,normalMapObjectSpace:Ue&&x.normalMapType===og,normalMapTangentSpace:Ue&&x.normalMapType===nh,packedNormalMap:Ue&&x.normalMapType===nh&&aw(x.normalMap.format),metalnessMap:mn,roughnessMap:Je,anisotropy:an,anisotropyMap:Zt,clearcoat:k,clearcoatMap:L,clearcoatNormalMap:M,clearcoatRoughnessMap:Y,diffuseRoughness:Lt,diffuseRoughnessMap:mt,dispersion:jt,retroreflection:ce,iridescence:At,iridescenceMap:lt,iridescenceThicknessMap:St,sheen:Oe,sheenColorMap:wt,sheenRoughnessMap:nt,specularMap:rt,specularColorMap:yt,specularIntensityMap:B,transmission:Xt,transmissionMap:ot,thicknessMap:it,gradientMap:Rt,opaque:x.transparent===!1&&x.blending===go&&x.alphaToCoverage===!1,alphaMap:Mt,alphaTest:Tt,alphaHash:$t,combine:x.combine,mapUv:Ut&&f(x.map.channel),aoMapUv:Re&&f(x.aoMap.channel),lightMapUv:Ce&&f(x.lightMap.channel),bumpMapUv:on&&f(x.bumpMap.channel),normalMapUv:Ue&&f(x.normalMap.channel),displacementMapUv:Mn&&f(x.displacementMap.channel),emissiveMapUv:Me&&f(x.emissiveMap.channel),metalnessMapUv:mn&&f(x.metalnessMap.channel),roughnessMapUv:Je&&f(x.roughnessMap.channel),anisotropyMapUv:Zt&&f(x.anisotropyMap.channel),clearcoatMapUv:L&&f(x.clearcoatMap.channel),clearcoatNormalMapUv:M&&f(x.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:Y&&f(x.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:mt&&f(x.diffuseRoughnessMap.channel),iridescenceMapUv:lt&&f(x.iridescenceMap.channel),iridescenceThicknessMapUv:St&&f(x.iridescenceThicknessMap.channel),sheenColorMapUv:wt&&f(x.sheenColorMap.channel),sheenRoughnessMapUv:nt&&f(x.sheenRoughnessMap.channel),specularMapUv:rt&&f(x.specularMap.channel),specularColorMapUv:yt&&f(x.specularColorMap.channel),specularIntensityMapUv:B&&f(x.specularIntensityMap.channel),transmissionMapUv:ot&&f(x.transmissionMap.channel),thicknessMapUv:it&&f(x.thicknessMap.channel),alphaMapUv:Mt&&f(x.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(Ue||an),vertexNormals:!!P.attributes.normal,vertexColors:x.vertexColors,vertexAlphas:x.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:R.isPoints===!0&&!!P.attributes.uv&&(Ut||Mt),fog:!!V,useFog:x.fog===!0,fogExp2:!!V&&V.isFogExp2,flatShading:x.wireframe===!1&&(x.flatShading===!0||P.attributes.normal===void 0&&Ue===!1&&(x.isMeshLambertMaterial||x.isMeshPhongMaterial||x.isMeshStandardMaterial||x.isMeshPhysicalMaterial)),sizeAttenuation:x.sizeAttenuation===!0,logarithmicDepthBuffer:h,reversedDepthBuffer:bt,skinning:R.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:tt,morphTextureStride:ct,numSunLights:S.sun.length,numDirLights:S.directional.length,numPointLights:S.point.length,numSpotLights:S.spot.length,numSpotLightMaps:S.spotLightMap.length,numRectAreaLights:S.rectArea.length,numHemiLights:S.hemi.length,numSunLightShadows:S.sunShadowMap.length,numDirLightShadows:S.directionalShadowMap.length,numPointLightShadows:S.pointShadowMap.length,numSpotLightShadows:S.spotShadowMap.length,numSpotLightShadowsWithMaps:S.numSpotLightShadowsWithMaps,numLightProbes:S.numLightProbes,numLightProbeGrids:U.filter(It=>It.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:x.dithering,shadowMapEnabled:i.shadowMap.enabled&&z.length>0,shadowMapType:i.shadowMap.type,toneMapping:ft,decodeVideoTexture:Ut&&x.map.isVideoTexture===!0&&be.getTransfer(x.map.colorSpace)===Ie,decodeVideoTextureEmissive:Me&&x.emissiveMap.isVideoTexture===!0&&be.getTransfer(x.emissiveMap.colorSpace)===Ie,premultipliedAlpha:x.premultipliedAlpha,doubleSided:x.side===jn,flipSided:x.side===Dn,useDepthPacking:x.depthPacking>=0,depthPacking:x.depthPacking||0,index0AttributeName:x.index0AttributeName,extensionClipCullDistance:Qt&&x.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Qt&&x.extensions.multiDraw===!0||Nt)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:x.customProgramCacheKey()};return te.vertexUv1s=l.has(1),te.vertexUv2s=l.has(2),te.vertexUv3s=l.has(3),l.clear(),te}function _(x){let S=[];if(x.shaderID?S.push(x.shaderID):(S.push(x.customVertexShaderID),S.push(x.customFragmentShaderID)),x.defines!==void 0)for(let z in x.defines)S.push(z),S.push(x.defines[z]);return x.isRawShaderMaterial===!1&&(p(S,x),m(S,x),S.push(i.outputColorSpace)),S.push(x.customProgramCacheKey),S.join()}function p(x,S){x.push(S.precision),x.push(S.outputColorSpace),x.push(S.envMapMode),x.push(S.envMapPMREM),x.push(S.envMapMaxLod),x.push(S.envMapSize),x.push(S.mapUv),x.push(S.alphaMapUv),x.push(S.lightMapUv),x.push(S.aoMapUv),x.push(S.bumpMapUv),x.push(S.normalMapUv),x.push(S.displacementMapUv),x.push(S.emissiveMapUv),x.push(S.metalnessMapUv),x.push(S.roughnessMapUv),x.push(S.anisotropyMapUv),x.push(S.clearcoatMapUv),x.push(S.clearcoatNormalMapUv),x.push(S.clearcoatRoughnessMapUv),x.push(S.diffuseRoughnessMapUv),x.push(S.iridescenceMapUv),x.push(S.iridescenceThicknessMapUv),x.push(S.sheenColorMapUv),x.push(S.sheenRoughnessMapUv),x.push(S.specularMapUv),x.push(S.specularColorMapUv),x.push(S.specularIntensityMapUv),x.push(S.transmissionMapUv),x.push(S.thicknessMapUv),x.push(S.combine),x.push(S.fogExp2),x.push(S.sizeAttenuation),x.push(S.morphTargetsCount),x.push(S.numSunLights),x.push(S.numDirLights),x.push(S.numPointLights),x.push(S.numSpotLights),x.push(S.numSpotLightMaps),x.push(S.numHemiLights),x.push(S.numRectAreaLights),x.push(S.numSunLightShadows),x.push(S.numDirLightShadows),x.push(S.numPointLightShadows),x.push(S.numSpotLightShadows),x.push(S.numSpotLightShadowsWithMaps),x.push(S.numLightProbes),x.push(S.numLightProbeGrids),x.push(S.shadowMapType),x.push(S.toneMapping),x.push(S.numClippingPlanes),x.push(S.numClipIntersection),x.push(S.depthPacking)}function m(x,S){o.disableAll(),S.instancing&&o.enable(0),S.instancingColor&&o.enable(1),S.instancingMorph&&o.enable(2),S.matcap&&o.enable(3),S.envMap&&o.enable(4),S.normalMapObjectSpace&&o.enable(5),S.normalMapTangentSpace&&o.enable(6),S.clearcoat&&o.enable(7),S.iridescence&&o.enable(8),S.alphaTest&&o.enable(9),S.vertexColors&&o.enable(10),S.vertexAlphas&&o.enable(11),S.vertexUv1s&&o.enable(12),S.vertexUv2s&&o.enable(13),S.vertexUv3s&&o.enable(14),S.vertexTangents&&o.enable(15),S.anisotropy&&o.enable(16),S.alphaHash&&o.enable(17),S.batching&&o.enable(18),S.dispersion&&o.enable(19),S.retroreflection&&o.enable(24),S.diffuseRoughness&&o.enable(25),S.batchingColor&&o.enable(20),S.gradientMap&&o.enable(21),S.packedNormalMap&&o.enable(22),S.vertexNormals&&o.enable(23),x.push(o.mask),o.disableAll(),S.fog&&o.enable(0),S.useFog&&o.enable(1),S.flatShading&&o.enable(2),S.logarithmicDepthBuffer&&o.enable(3),S.reversedDepthBuffer&&o.enable(4),S.skinning&&o.enable(5),S.morphTargets&&o.enable(6),S.morphNormals&&o.enable(7),S.morphColors&&o.enable(8),S.premultipliedAlpha&&o.enable(9),S.shadowMapEnabled&&o.enable(10),S.doubleSided&&o.enable(11),S.flipSided&&o.enable(12),S.useDepthPacking&&o.enable(13),S.dithering&&o.enable(14),S.transmission&&o.enable(15),S.sheen&&o.enable(16),S.opaque&&o.enable(17),S.pointsUvs&&o.enable(18),S.decodeVideoTexture&&o.enable(19),S.decodeVideoTextureEmissive&&o.enable(20),S.alphaToCoverage&&o.enable(21),S.numLightProbeGrids>0&&o.enable(22),S.hasPositionAttribute&&o.enable(23),x.push(o.mask)}function y(x){let S=d[x.type],z;if(S){let I=Ki[S];z=bg.clone(I.uniforms)}else z=x.uniforms;return z}function E(x,S){let z=u.get(S);return z!==void 0?++z.usedTimes:(z=new rw(i,S,x,s),c.push(z),u.set(S,z)),z}function b(x){if(--x.usedTimes===0){let S=c.indexOf(x);c[S]=c[c.length-1],c.pop(),u.delete(x.cacheKey),x.destroy()}}function C(x){a.remove(x)}function w(){a.dispose()}return{getParameters:g,getProgramCacheKey:_,getUniforms:y,acquireProgram:E,releaseProgram:b,releaseShaderCache:C,programs:c,dispose:w}}function cw(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function hw(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function Vg(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function Gg(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function a(d,f,g,_,p,m){let y=i[t];return y===void 0?(y={id:d.id,object:d,geometry:f,material:g,materialVariant:o(d),groupOrder:_,renderOrder:d.renderOrder,z:p,group:m},i[t]=y):(y.id=d.id,y.object=d,y.geometry=f,y.material=g,y.materialVariant=o(d),y.groupOrder=_,y.renderOrder=d.renderOrder,y.z=p,y.group=m),t++,y}function l(d,f,g,_,p,m,y){y.reversedDepth===!0&&(p=-p);let E=a(d,f,g,_,p,m);g.transmission>0?n.push(E):g.transparent===!0?s.push(E):e.push(E)}function c(d,f,g,_,p,m){let y=a(d,f,g,_,p,m);g.transmission>0?n.unshift(y):g.transparent===!0?s.unshift(y):e.unshift(y)}function u(d,f){e.length>1&&e.sort(d||hw),n.length>1&&n.sort(f||Vg),s.length>1&&s.sort(f||Vg)}function h(){for(let d=t,f=i.length;d<f;d++){let g=i[d];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:h,sort:u}}function uw(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new Gg,i.set(n,[o])):s>=r.length?(o=new Gg,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function dw(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new X,color:new le};break;case"SpotLight":e={position:new X,direction:new X,color:new le,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new X,color:new le,distance:0,decay:0};break;case"HemisphereLight":e={direction:new X,skyColor:new le,groundColor:new le};break;case"RectAreaLight":e={color:new le,position:new X,halfWidth:new X,halfHeight:new X};break}return i[t.id]=e,e}}}function fw(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var pw=0;function mw(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function gw(i){let t=new dw,e=fw(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new X);let s=new X,r=new $e,o=new $e;function a(c){let u=0,h=0,d=0;for(let U=0;U<9;U++)n.probe[U].set(0,0,0);let f=0,g=0,_=0,p=0,m=0,y=0,E=0,b=0,C=0,w=0,x=0,S=0,z=0,I=0;c.sort(mw);for(let U=0,V=c.length;U<V;U++){let P=c[U],F=P.color,H=P.intensity,O=P.distance,st=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===qs?st=P.shadow.map.texture:st=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)u+=F.r*H,h+=F.g*H,d+=F.b*H;else if(P.isLightProbe){for(let Z=0;Z<9;Z++)n.probe[Z].addScaledVector(P.sh.coefficients[Z],H);I++}else if(P.isSunLight){let Z=t.get(P);if(Z.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let j=P.shadow,tt=e.get(P);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize.copy(j.mapSize).multiply(j.getFrameExtents()),n.sunShadow[g]=tt,n.sunShadowMap[g]=st;let ct=j.getViewportCount();for(let at=0;at<ct;at++)n.sunShadowMatrix[_+at]=j.getMatrix(at),n.sunShadowCascade[_+at]=j._cascadeData[at];_+=ct,g++}n.sun[f]=Z,f++}else if(P.isDirectionalLight){let Z=t.get(P);if(Z.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let j=P.shadow,tt=e.get(P);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize=j.mapSize,n.directionalShadow[p]=tt,n.directionalShadowMap[p]=st,n.directionalShadowMatrix[p]=P.shadow.matrix,C++}n.directional[p]=Z,p++}else if(P.isSpotLight){let Z=t.get(P);Z.position.setFromMatrixPosition(P.matrixWorld),Z.color.copy(F).multiplyScalar(H),Z.distance=O,Z.coneCos=Math.cos(P.angle),Z.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),Z.decay=P.decay,n.spot[y]=Z;let j=P.shadow;if(P.map&&(n.spotLightMap[S]=P.map,S++,j.updateMatrices(P),P.castShadow&&z++),n.spotLightMatrix[y]=j.matrix,P.castShadow){let tt=e.get(P);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize=j.mapSize,n.spotShadow[y]=tt,n.spotShadowMap[y]=st,x++}y++}else if(P.isRectAreaLight){let Z=t.get(P);Z.color.copy(F).multiplyScalar(H),Z.halfWidth.set(P.width*.5,0,0),Z.halfHeight.set(0,P.height*.5,0),n.rectArea[E]=Z,E++}else if(P.isPointLight){let Z=t.get(P);if(Z.color.copy(P.color).multiplyScalar(P.intensity),Z.distance=P.distance,Z.decay=P.decay,P.castShadow){let j=P.shadow,tt=e.get(P);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize=j.mapSize,tt.shadowCameraNear=j.camera.near,tt.shadowCameraFar=j.camera.far,n.pointShadow[m]=tt,n.pointShadowMap[m]=st,n.pointShadowMatrix[m]=P.shadow.matrix,w++}n.point[m]=Z,m++}else if(P.isHemisphereLight){let Z=t.get(P);Z.skyColor.copy(P.color).multiplyScalar(H),Z.groundColor.copy(P.groundColor).multiplyScalar(H),n.hemi[b]=Z,b++}}E>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Ot.LTC_FLOAT_1,n.rectAreaLTC2=Ot.LTC_FLOAT_2):(n.rectAreaLTC1=Ot.LTC_HALF_1,n.rectAreaLTC2=Ot.LTC_HALF_2)),n.ambient[0]=u,n.ambient[1]=h,n.ambient[2]=d;let R=n.hash;(R.sunLength!==f||R.directionalLength!==p||R.pointLength!==m||R.spotLength!==y||R.rectAreaLength!==E||R.hemiLength!==b||R.numSunShadows!==g||R.numDirectionalShadows!==C||R.numPointShadows!==w||R.numSpotShadows!==x||R.numSpotMaps!==S||R.numLightProbes!==I)&&(n.sun.length=f,n.directional.length=p,n.spot.length=y,n.rectArea.length=E,n.point.length=m,n.hemi.length=b,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=_,n.sunShadowCascade.length=_,n.directionalShadow.length=C,n.directionalShadowMap.length=C,n.directionalShadowMatrix.length=C,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=x,n.spotShadowMap.length=x,n.spotLightMatrix.length=x+S-z,n.spotLightMap.length=S,n.numSpotLightShadowsWithMaps=z,n.numLightProbes=I,R.sunLength=f,R.directionalLength=p,R.pointLength=m,R.spotLength=y,R.rectAreaLength=E,R.hemiLength=b,R.numSunShadows=g,R.numDirectionalShadows=C,R.numPointShadows=w,R.numSpotShadows=x,R.numSpotMaps=S,R.numLightProbes=I,n.version=pw++)}function l(c,u){let h=0,d=0,f=0,g=0,_=0,p=0,m=u.matrixWorldInverse;for(let y=0,E=c.length;y<E;y++){let b=c[y];if(b.isSunLight){let C=n.sun[h];C.direction.setFromMatrixPosition(b.matrixWorld),C.direction.transformDirection(m),h++}else if(b.isDirectionalLight){let C=n.directional[d];C.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),C.direction.sub(s),C.direction.transformDirection(m),d++}else if(b.isSpotLight){let C=n.spot[g];C.position.setFromMatrixPosition(b.matrixWorld),C.position.applyMatrix4(m),C.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),C.direction.sub(s),C.direction.transformDirection(m),g++}else if(b.isRectAreaLight){let C=n.rectArea[_];C.position.setFromMatrixPosition(b.matrixWorld),C.position.applyMatrix4(m),o.identity(),r.copy(b.matrixWorld),r.premultiply(m),o.extractRotation(r),C.halfWidth.set(b.width*.5,0,0),C.halfHeight.set(0,b.height*.5,0),C.halfWidth.applyMatrix4(o),C.halfHeight.applyMatrix4(o),_++}else if(b.isPointLight){let C=n.point[f];C.position.setFromMatrixPosition(b.matrixWorld),C.position.applyMatrix4(m),f++}else if(b.isHemisphereLight){let C=n.hemi[p];C.direction.setFromMatrixPosition(b.matrixWorld),C.direction.transformDirection(m),p++}}}return{setup:a,setupView:l,state:n}}function Hg(i){let t=new gw(i),e=[],n=[],s=[];function r(h){u.camera=h,e.length=0,n.length=0,s.length=0}function o(h){h.isLightProbeGrid?s.push(h):e.push(h)}function a(h){n.push(h)}function l(){t.setup(e),s.sort((h,d)=>h.priority-d.priority||h.id-d.id)}function c(h){t.setupView(e,h)}let u={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:u,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function _w(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new Hg(i),t.set(s,[a])):r>=o.length?(a=new Hg(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var xw=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,yw=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,vw=[new X(1,0,0),new X(-1,0,0),new X(0,1,0),new X(0,-1,0),new X(0,0,1),new X(0,0,-1)],bw=[new X(0,-1,0),new X(0,-1,0),new X(0,0,1),new X(0,0,-1),new X(0,-1,0),new X(0,-1,0)],Wg=new $e,Ra=new X,Td=new X;function Mw(i,t,e){let n=new zs,s=new re,r=new re,o=new Ye,a=new nc,l=new ic,c={},u=e.maxTextureSize,h={[Ni]:Dn,[Dn]:Ni,[jn]:jn},d=new Zi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new re},radius:{value:4}},vertexShader:xw,fragmentShader:yw}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let g=new zn;g.setAttribute("position",new Bn(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let _=new Pn(g,d),p=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=va;let m=this.type;this.render=function(w,x,S){if(p.enabled===!1||p.autoUpdate===!1&&p.needsUpdate===!1||w.length===0)return;this.type===Om&&(Jt("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=va);let z=i.getRenderTarget(),I=i.getActiveCubeFace(),R=i.getActiveMipmapLevel(),U=i.state;U.setBlending(pr),U.buffers.depth.getReversed()===!0?U.buffers.color.setClear(0,0,0,0):U.buffers.color.setClear(1,1,1,1),U.buffers.depth.setTest(!0),U.setScissorTest(!1);let V=m!==this.type;V&&x.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(F=>F.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,F=w.length;P<F;P++){let H=w[P],O=H.shadow;if(O===void 0){Jt("WebGLShadowMap:",H,"has no shadow.");continue}if(O.autoUpdate===!1&&O.needsUpdate===!1)continue;s.copy(O.mapSize);let st=O.getFrameExtents();s.multiply(st),r.copy(O.mapSize),(s.x>u||s.y>u)&&(s.x>u&&(r.x=Math.floor(u/st.x),s.x=r.x*st.x,O.mapSize.x=r.x),s.y>u&&(r.y=Math.floor(u/st.y),s.y=r.y*st.y,O.mapSize.y=r.y));let Z=i.state.buffers.depth.getReversed();if(O.camera._reversedDepth=Z,O.map===null||V===!0){if(O.map!==null&&(O.map.depthTexture!==null&&(O.map.depthTexture.dispose(),O.map.depthTexture=null),O.map.dispose()),this.type===mo){if(H.isPointLight){Jt("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}O.map=new fi(s.x,s.y,{format:qs,type:Oi,minFilter:Jn,magFilter:Jn,generateMipmaps:!1}),O.map.texture.name=H.name+".shadowMap",O.map.depthTexture=new xs(s.x,s.y,Fi),O.map.depthTexture.name=H.name+".shadowMapDepth",O.map.depthTexture.format=ps,O.map.depthTexture.compareFunction=null,O.map.depthTexture.minFilter=Cn,O.map.depthTexture.magFilter=Cn}else H.isPointLight?(O.map=new Pa(s.x),O.map.depthTexture=new ca(s.x,Ui)):(O.map=new fi(s.x,s.y),O.map.depthTexture=new xs(s.x,s.y,Ui)),O.map.depthTexture.name=H.name+".shadowMap",O.map.depthTexture.format=ps,this.type===va?(O.map.depthTexture.compareFunction=Z?fd:dd,O.map.depthTexture.minFilter=Jn,O.map.depthTexture.magFilter=Jn):(O.map.depthTexture.compareFunction=null,O.map.depthTexture.minFilter=Cn,O.map.depthTexture.magFilter=Cn);O.camera.updateProjectionMatrix()}O.map.isWebGLCubeRenderTarget!==!0&&(O.map.width!==s.x||O.map.height!==s.y)&&O.map.setSize(s.x,s.y);let j=O.map.isWebGLCubeRenderTarget?6:O.getViewportCount();H.isPointLight!==!0&&O.updateMatrices(H,S);let tt=(O.camera.layers.mask&4294967294)!==0?O.camera.layers:S.layers;for(let ct=0;ct<j;ct++){let at=O.getCamera(ct);if(H.isPointLight){let $=O.camera,dt=O.matrix,pt=H.distance||$.far;pt!==$.far&&($.far=pt,$.updateProjectionMatrix()),Ra.setFromMatrixPosition(H.matrixWorld),$.position.copy(Ra),Td.copy($.position),Td.add(vw[ct]),$.up.copy(bw[ct]),$.lookAt(Td),$.updateMatrixWorld(),dt.makeTranslation(-Ra.x,-Ra.y,-Ra.z),Wg.multiplyMatrices($.projectionMatrix,$.matrixWorldInverse),O._frustum.setFromProjectionMatrix(Wg,$.coordinateSystem,$.reversedDepth)}if(O.map.isWebGLCubeRenderTarget)i.setRenderTarget(O.map,ct),i.clear();else{ct===0&&(i.setRenderTarget(O.map),i.clear());let $=O.getViewport(ct);o.set(r.x*$.x,r.y*$.y,r.x*$.z,r.y*$.w),U.viewport(o)}n=O.getFrustum(ct),b(x,S,at,H,tt,this.type)}O.isPointLightShadow!==!0&&this.type===mo&&y(O,S),O.needsUpdate=!1}m=this.type,p.needsUpdate=!1,i.setRenderTarget(z,I,R)};function y(w,x){let S=t.update(_);d.defines.VSM_SAMPLES!==w.blurSamples&&(d.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new fi(s.x,s.y,{format:qs,type:Oi}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),d.uniforms.shadow_pass.value=w.map.depthTexture,d.uniforms.resolution.value.set(w.map.width,w.map.height),d.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(x,null,S,d,_,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(x,null,S,f,_,null)}function E(w,x,S,z){let I=null,R=S.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(R!==void 0)I=R;else if(I=S.isPointLight===!0?l:a,i.localClippingEnabled&&x.clipShadows===!0&&Array.isArray(x.clippingPlanes)&&x.clippingPlanes.length!==0||x.displacementMap&&x.displacementScale!==0||x.alphaMap&&x.alphaTest>0||x.map&&x.alphaTest>0||x.alphaToCoverage===!0){let U=I.uuid,V=x.uuid,P=c[U];P===void 0&&(P={},c[U]=P);let F=P[V];F===void 0&&(F=I.clone(),P[V]=F,x.addEventListener("dispose",C)),I=F}if(I.visible=x.visible,I.wireframe=x.wireframe,z===mo?I.side=x.shadowSide!==null?x.shadowSide:x.side:I.side=x.shadowSide!==null?x.shadowSide:h[x.side],I.alphaMap=x.alphaMap,I.alphaTest=x.alphaToCoverage===!0?.5:x.alphaTest,I.map=x.map,I.clipShadows=x.clipShadows,I.clippingPlanes=x.clippingPlanes,I.clipIntersection=x.clipIntersection,I.displacementMap=x.displacementMap,I.displacementScale=x.displacementScale,I.displacementBias=x.displacementBias,I.wireframeLinewidth=x.wireframeLinewidth,I.linewidth=x.linewidth,S.isPointLight===!0&&I.isMeshDistanceMaterial===!0){let U=i.properties.get(I);U.light=S}return I}function b(w,x,S,z,I,R){if(w.visible===!1)return;if(w.layers.test(I)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&R===mo)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(S.matrixWorldInverse,w.matrixWorld);let P=t.update(w),F=w.material;if(Array.isArray(F)){let H=P.groups;for(let O=0,st=H.length;O<st;O++){let Z=H[O],j=F[Z.materialIndex];if(j&&j.visible){let tt=E(w,j,z,R);w.onBeforeShadow(i,w,x,S,P,tt,Z),i.renderBufferDirect(S,null,P,tt,w,Z),w.onAfterShadow(i,w,x,S,P,tt,Z)}}}else if(F.visible){let H=E(w,F,z,R);w.onBeforeShadow(i,w,x,S,P,H,null),i.renderBufferDirect(S,null,P,H,w,null),w.onAfterShadow(i,w,x,S,P,H,null)}}let V=w.children;for(let P=0,F=V.length;P<F;P++)b(V[P],x,S,z,I,R)}function C(w){w.target.removeEventListener("dispose",C);for(let S in c){let z=c[S],I=w.target.uuid;I in z&&(z[I].dispose(),delete z[I])}}}function Sw(i,t){function e(){let B=!1,ot=new Ye,it=null,Rt=new Ye(0,0,0,0);return{setMask:function(Mt){it!==Mt&&!B&&(i.colorMask(Mt,Mt,Mt,Mt),it=Mt)},setLocked:function(Mt){B=Mt},setClear:function(Mt,Tt,$t,Qt,ft){ft===!0&&(Mt*=Qt,Tt*=Qt,$t*=Qt),ot.set(Mt,Tt,$t,Qt),Rt.equals(ot)===!1&&(i.clearColor(Mt,Tt,$t,Qt),Rt.copy(ot))},reset:function(){B=!1,it=null,Rt.set(-1,0,0,0)}}}function n(){let B=!1,ot=!1,it=null,Rt=null,Mt=null;return{setReversed:function(Tt){if(ot!==Tt){let $t=t.get("EXT_clip_control");Tt?$t.clipControlEXT($t.LOWER_LEFT_EXT,$t.ZERO_TO_ONE_EXT):$t.clipControlEXT($t.LOWER_LEFT_EXT,$t.NEGATIVE_ONE_TO_ONE_EXT),ot=Tt;let Qt=Mt;Mt=null,this.setClear(Qt)}},getReversed:function(){return ot},setTest:function(Tt){Tt?bt(i.DEPTH_TEST):_t(i.DEPTH_TEST)},setMask:function(Tt){it!==Tt&&!B&&(i.depthMask(Tt),it=Tt)},setFunc:function(Tt){if(ot&&(Tt=_g[Tt]),Rt!==Tt){switch(Tt){case Bl:i.depthFunc(i.NEVER);break;case kl:i.depthFunc(i.ALWAYS);break;case zl:i.depthFunc(i.LESS);break;case so:i.depthFunc(i.LEQUAL);break;case Vl:i.depthFunc(i.EQUAL);break;case Gl:i.depthFunc(i.GEQUAL);break;case Hl:i.depthFunc(i.GREATER);break;case Wl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Rt=Tt}},setLocked:function(Tt){B=Tt},setClear:function(Tt){Mt!==Tt&&(Mt=Tt,ot&&(Tt=1-Tt),i.clearDepth(Tt))},reset:function(){B=!1,it=null,Rt=null,Mt=null,ot=!1}}}function s(){let B=!1,ot=null,it=null,Rt=null,Mt=null,Tt=null,$t=null,Qt=null,ft=null;return{setTest:function(Gt){B||(Gt?bt(i.STENCIL_TEST):_t(i.STENCIL_TEST))},setMask:function(Gt){ot!==Gt&&!B&&(i.stencilMask(Gt),ot=Gt)},setFunc:function(Gt,te,It){(it!==Gt||Rt!==te||Mt!==It)&&(i.stencilFunc(Gt,te,It),it=Gt,Rt=te,Mt=It)},setOp:function(Gt,te,It){(Tt!==Gt||$t!==te||Qt!==It)&&(i.stencilOp(Gt,te,It),Tt=Gt,$t=te,Qt=It)},setLocked:function(Gt){B=Gt},setClear:function(Gt){ft!==Gt&&(i.clearStencil(Gt),ft=Gt)},reset:function(){B=!1,ot=null,it=null,Rt=null,Mt=null,Tt=null,$t=null,Qt=null,ft=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,u={},h={},d={},f=new WeakMap,g=[],_=null,p=!1,m=null,y=null,E=null,b=null,C=null,w=null,x=null,S=new le(0,0,0),z=0,I=!1,R=null,U=null,V=null,P=null,F=null,H=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),O=!1,st=0,Z=i.getParameter(i.VERSION);Z.indexOf("WebGL")!==-1?(st=parseFloat(/^WebGL (\d)/.exec(Z)[1]),O=st>=1):Z.indexOf("OpenGL ES")!==-1&&(st=parseFloat(/^OpenGL ES (\d)/.exec(Z)[1]),O=st>=2);let j=null,tt={},ct=i.getParameter(i.SCISSOR_BOX),at=i.getParameter(i.VIEWPORT),$=new Ye().fromArray(ct),dt=new Ye().fromArray(at);function pt(B,ot,it,Rt){let Mt=new Uint8Array(4),Tt=i.createTexture();i.bindTexture(B,Tt),i.texParameteri(B,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(B,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let $t=0;$t<it;$t++)B===i.TEXTURE_3D||B===i.TEXTURE_2D_ARRAY?i.texImage3D(ot,0,i.RGBA,1,1,Rt,0,i.RGBA,i.UNSIGNED_BYTE,Mt):i.texImage2D(ot+$t,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,Mt);return Tt}let vt={};vt[i.TEXTURE_2D]=pt(i.TEXTURE_2D,i.TEXTURE_2D,1),vt[i.TEXTURE_CUBE_MAP]=pt(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),vt[i.TEXTURE_2D_ARRAY]=pt(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),vt[i.TEXTURE_3D]=pt(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),bt(i.DEPTH_TEST),o.setFunc(so),on(!1),Ue(Xu),bt(i.CULL_FACE),Re(pr);function bt(B){u[B]!==!0&&(i.enable(B),u[B]=!0)}function _t(B){u[B]!==!1&&(i.disable(B),u[B]=!1)}function Nt(B,ot){return d[B]!==ot?(i.bindFramebuffer(B,ot),d[B]=ot,B===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=ot),B===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=ot),!0):!1}function Ut(B,ot){let it=g,Rt=!1;if(B){it=f.get(ot),it===void 0&&(it=[],f.set(ot,it));let Mt=B.textures;if(it.length!==Mt.length||it[0]!==i.COLOR_ATTACHMENT0){for(let Tt=0,$t=Mt.length;Tt<$t;Tt++)it[Tt]=i.COLOR_ATTACHMENT0+Tt;it.length=Mt.length,Rt=!0}}else it[0]!==i.BACK&&(it[0]=i.BACK,Rt=!0);Rt&&i.drawBuffers(it)}function ee(B){return _!==B?(i.useProgram(B),_=B,!0):!1}let he={[mr]:i.FUNC_ADD,[km]:i.FUNC_SUBTRACT,[zm]:i.FUNC_REVERSE_SUBTRACT};he[Vm]=i.MIN,he[Gm]=i.MAX;let ne={[Hm]:i.ZERO,[Wm]:i.ONE,[Xm]:i.SRC_COLOR,[Zu]:i.SRC_ALPHA,[jm]:i.SRC_ALPHA_SATURATE,[Zm]:i.DST_COLOR,[qm]:i.DST_ALPHA,[$m]:i.ONE_MINUS_SRC_COLOR,[Ju]:i.ONE_MINUS_SRC_ALPHA,[Jm]:i.ONE_MINUS_DST_COLOR,[Ym]:i.ONE_MINUS_DST_ALPHA,[Km]:i.CONSTANT_COLOR,[Qm]:i.ONE_MINUS_CONSTANT_COLOR,[tg]:i.CONSTANT_ALPHA,[eg]:i.ONE_MINUS_CONSTANT_ALPHA};function Re(B,ot,it,Rt,Mt,Tt,$t,Qt,ft,Gt){if(B===pr){p===!0&&(_t(i.BLEND),p=!1);return}if(p===!1&&(bt(i.BLEND),p=!0),B!==Bm){if(B!==m||Gt!==I){if((y!==mr||C!==mr)&&(i.blendEquation(i.FUNC_ADD),y=mr,C=mr),Gt)switch(B){case go:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case $u:i.blendFunc(i.ONE,i.ONE);break;case qu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Yu:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:se("WebGLState: Invalid blending: ",B);break}else switch(B){case go:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case $u:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case qu:se("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Yu:se("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:se("WebGLState: Invalid blending: ",B);break}E=null,b=null,w=null,x=null,S.set(0,0,0),z=0,m=B,I=Gt}return}Mt=Mt||ot,Tt=Tt||it,$t=$t||Rt,(ot!==y||Mt!==C)&&(i.blendEquationSeparate(he[ot],he[Mt]),y=ot,C=Mt),(it!==E||Rt!==b||Tt!==w||$t!==x)&&(i.blendFuncSeparate(ne[it],ne[Rt],ne[Tt],ne[$t]),E=it,b=Rt,w=Tt,x=$t),(Qt.equals(S)===!1||ft!==z)&&(i.blendColor(Qt.r,Qt.g,Qt.b,ft),S.copy(Qt),z=ft),m=B,I=!1}function Ce(B,ot){B.side===jn?_t(i.CULL_FACE):bt(i.CULL_FACE);let it=B.side===Dn;ot&&(it=!it),on(it),B.blending===go&&B.transparent===!1?Re(pr):Re(B.blending,B.blendEquation,B.blendSrc,B.blendDst,B.blendEquationAlpha,B.blendSrcAlpha,B.blendDstAlpha,B.blendColor,B.blendAlpha,B.premultipliedAlpha),o.setFunc(B.depthFunc),o.setTest(B.depthTest),o.setMask(B.depthWrite),r.setMask(B.colorWrite);let Rt=B.stencilWrite;a.setTest(Rt),Rt&&(a.setMask(B.stencilWriteMask),a.setFunc(B.stencilFunc,B.stencilRef,B.stencilFuncMask),a.setOp(B.stencilFail,B.stencilZFail,B.stencilZPass)),Me(B.polygonOffset,B.polygonOffsetFactor,B.polygonOffsetUnits),B.alphaToCoverage===!0?bt(i.SAMPLE_ALPHA_TO_COVERAGE):_t(i.SAMPLE_ALPHA_TO_COVERAGE)}function on(B){R!==B&&(B?i.frontFace(i.CW):i.frontFace(i.CCW),R=B)}function Ue(B){B!==Um?(bt(i.CULL_FACE),B!==U&&(B===Xu?i.cullFace(i.BACK):B===Fm?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):_t(i.CULL_FACE),U=B}function Mn(B){B!==V&&(O&&i.lineWidth(B),V=B)}function Me(B,ot,it){B?(bt(i.POLYGON_OFFSET_FILL),(P!==ot||F!==it)&&(P=ot,F=it,o.getReversed()&&(ot=-ot,it=-it),i.polygonOffset(ot,it))):_t(i.POLYGON_OFFSET_FILL)}function mn(B){B?bt(i.SCISSOR_TEST):_t(i.SCISSOR_TEST)}function Je(B){B===void 0&&(B=i.TEXTURE0+H-1),j!==B&&(i.activeTexture(B),j=B)}function an(B,ot,it){it===void 0&&(j===null?it=i.TEXTURE0+H-1:it=j);let Rt=tt[it];Rt===void 0&&(Rt={type:void 0,texture:void 0},tt[it]=Rt),(Rt.type!==B||Rt.texture!==ot)&&(j!==it&&(i.activeTexture(it),j=it),i.bindTexture(B,ot||vt[B]),Rt.type=B,Rt.texture=ot)}function k(){let B=tt[j];B!==void 0&&B.type!==void 0&&(i.bindTexture(B.type,null),B.type=void 0,B.texture=void 0)}function Lt(){try{i.compressedTexImage2D(...arguments)}catch(B){se("WebGLState:",B)}}function jt(){try{i.compressedTexImage3D(...arguments)}catch(B){se("WebGLState:",B)}}function ce(){try{i.texSubImage2D(...arguments)}catch(B){se("WebGLState:",B)}}function At(){try{i.texSubImage3D(...arguments)}catch(B){se("WebGLState:",B)}}function Oe(){try{i.compressedTexSubImage2D(...arguments)}catch(B){se("WebGLState:",B)}}function Xt(){try{i.compressedTexSubImage3D(...arguments)}catch(B){se("WebGLState:",B)}}function Zt(){try{i.texStorage2D(...arguments)}catch(B){se("WebGLState:",B)}}function L(){try{i.texStorage3D(...arguments)}catch(B){se("WebGLState:",B)}}function M(){try{i.texImage2D(...arguments)}catch(B){se("WebGLState:",B)}}function Y(){try{i.texImage3D(...arguments)}catch(B){se("WebGLState:",B)}}function mt(B){return h[B]!==void 0?h[B]:i.getParameter(B)}function lt(B,ot){h[B]!==ot&&(i.pixelStorei(B,ot),h[B]=ot)}function St(B){$.equals(B)===!1&&(i.scissor(B.x,B.y,B.z,B.w),$.copy(B))}function wt(B){dt.equals(B)===!1&&(i.viewport(B.x,B.y,B.z,B.w),dt.copy(B))}function nt(B,ot){let it=c.get(ot);it===void 0&&(it=new WeakMap,c.set(ot,it));let Rt=it.get(B);Rt===void 0&&(Rt=i.getUniformBlockIndex(ot,B.name),i.uniformBlockBinding(ot,Rt,Rt),it.set(B,Rt))}function rt(B,ot,it){let Mt=c.get(ot).get(B);l[Mt]!==it&&(i.bindBufferBase(i.UNIFORM_BUFFER,Mt,it),l[Mt]=it)}function yt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),u={},h={},j=null,tt={},d={},l={},f=new WeakMap,g=[],_=null,p=!1,m=null,y=null,E=null,b=null,C=null,w=null,x=null,S=new le(0,0,0),z=0,I=!1,R=null,U=null,V=null,P=null,F=null,$.set(0,0,i.canvas.width,i.canvas.height),dt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:bt,disable:_t,bindFramebuffer:Nt,drawBuffers:Ut,useProgram:ee,setBlending:Re,setMaterial:Ce,setFlipSided:on,setCullFace:Ue,setLineWidth:Mn,setPolygonOffset:Me,setScissorTest:mn,activeTexture:Je,bindTexture:an,unbindTexture:k,compressedTexImage2D:Lt,compressedTexImage3D:jt,texImage2D:M,texImage3D:Y,pixelStorei:lt,getParameter:mt,updateUBOMapping:nt,uniformBlockBinding:rt,texStorage2D:Zt,texStorage3D:L,texSubImage2D:ce,texSubImage3D:At,compressedTexSubImage2D:Oe,compressedTexSubImage3D:Xt,scissor:St,viewport:wt,reset:yt}}function ww(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new re,u=new WeakMap,h=new Set,d,f=new WeakMap,g=new Set,_=new FinalizationRegistry(L=>g.delete(L)),p=!1;try{p=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(L,M){return p?new OffscreenCanvas(L,M):ta("canvas")}function y(L,M,Y){let mt=1,lt=Zt(L);if((lt.width>Y||lt.height>Y)&&(mt=Y/Math.max(lt.width,lt.height)),mt<1)if(typeof HTMLImageElement<"u"&&L instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&L instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&L instanceof ImageBitmap||typeof VideoFrame<"u"&&L instanceof VideoFrame){let St=Math.floor(mt*lt.width),wt=Math.floor(mt*lt.height);d===void 0&&(d=m(St,wt));let nt=M?m(St,wt):d;return nt.width=St,nt.height=wt,nt.getContext("2d").drawImage(L,0,0,St,wt),Jt("WebGLRenderer: Texture has been resized from ("+lt.width+"x"+lt.height+") to ("+St+"x"+wt+")."),nt}else return"data"in L&&Jt("WebGLRenderer: Image in DataTexture is too big ("+lt.width+"x"+lt.height+")."),L;return L}function E(L){return L.generateMipmaps}function b(L){i.generateMipmap(L)}function C(L){return L.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:L.isWebGL3DRenderTarget?i.TEXTURE_3D:L.isWebGLArrayRenderTarget||L.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(L,M,Y,mt,lt,St=!1){if(L!==null){if(i[L]!==void 0)return i[L];Jt("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+L+"'")}let wt;mt&&(wt=t.get("EXT_texture_norm16"),wt||Jt("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let nt=M;if(M===i.RED&&(Y===i.FLOAT&&(nt=i.R32F),Y===i.HALF_FLOAT&&(nt=i.R16F),Y===i.UNSIGNED_BYTE&&(nt=i.R8),Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.R16_EXT),Y===i.SHORT&&wt&&(nt=wt.R16_SNORM_EXT)),M===i.RED_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.R8UI),Y===i.UNSIGNED_SHORT&&(nt=i.R16UI),Y===i.UNSIGNED_INT&&(nt=i.R32UI),Y===i.BYTE&&(nt=i.R8I),Y===i.SHORT&&(nt=i.R16I),Y===i.INT&&(nt=i.R32I)),M===i.RG&&(Y===i.FLOAT&&(nt=i.RG32F),Y===i.HALF_FLOAT&&(nt=i.RG16F),Y===i.UNSIGNED_BYTE&&(nt=i.RG8),Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.RG16_EXT),Y===i.SHORT&&wt&&(nt=wt.RG16_SNORM_EXT)),M===i.RG_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RG8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RG16UI),Y===i.UNSIGNED_INT&&(nt=i.RG32UI),Y===i.BYTE&&(nt=i.RG8I),Y===i.SHORT&&(nt=i.RG16I),Y===i.INT&&(nt=i.RG32I)),M===i.RGB_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RGB8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RGB16UI),Y===i.UNSIGNED_INT&&(nt=i.RGB32UI),Y===i.BYTE&&(nt=i.RGB8I),Y===i.SHORT&&(nt=i.RGB16I),Y===i.INT&&(nt=i.RGB32I)),M===i.RGBA_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RGBA8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RGBA16UI),Y===i.UNSIGNED_INT&&(nt=i.RGBA32UI),Y===i.BYTE&&(nt=i.RGBA8I),Y===i.SHORT&&(nt=i.RGBA16I),Y===i.INT&&(nt=i.RGBA32I)),M===i.RGB&&(Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.RGB16_EXT),Y===i.SHORT&&wt&&(nt=wt.RGB16_SNORM_EXT),Y===i.UNSIGNED_INT_5_9_9_9_REV&&(nt=i.RGB9_E5),Y===i.UNSIGNED_INT_10F_11F_11F_REV&&(nt=i.R11F_G11F_B10F)),M===i.RGBA){let rt=St?Qo:be.getTransfer(lt);Y===i.FLOAT&&(nt=i.RGBA32F),Y===i.HALF_FLOAT&&(nt=i.RGBA16F),Y===i.UNSIGNED_BYTE&&(nt=rt===Ie?i.SRGB8_ALPHA8:i.RGBA8),Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.RGBA16_EXT),Y===i.SHORT&&wt&&(nt=wt.RGBA16_SNORM_EXT),Y===i.UNSIGNED_SHORT_4_4_4_4&&(nt=i.RGBA4),Y===i.UNSIGNED_SHORT_5_5_5_1&&(nt=i.RGB5_A1)}return(nt===i.R16F||nt===i.R32F||nt===i.RG16F||nt===i.RG32F||nt===i.RGBA16F||nt===i.RGBA32F)&&t.get("EXT_color_buffer_float"),nt}function x(L,M){let Y;return L?M===null||M===Ui||M===_r?Y=i.DEPTH24_STENCIL8:M===Fi?Y=i.DEPTH32F_STENCIL8:M===xo&&(Y=i.DEPTH24_STENCIL8,Jt("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):M===null||M===Ui||M===_r?Y=i.DEPTH_COMPONENT24:M===Fi?Y=i.DEPTH_COMPONENT32F:M===xo&&(Y=i.DEPTH_COMPONENT16),Y}function S(L,M){return E(L)===!0||L.isFramebufferTexture&&L.minFilter!==Cn&&L.minFilter!==Jn?Math.log2(Math.max(M.width,M.height))+1:L.mipmaps.length>0?L.mipmaps.length:L.isCompressedTexture&&Array.isArray(L.image)?M.mipmaps.length:1}function z(L){let M=new WeakRef(L);n.get(L).__ref=M,g.add(M),_.register(L,M,M)}function I(L){let M=n.get(L).__ref;M!==void 0&&(g.delete(M),_.unregister(M))}function R(L){V(L.target)}function U(L){P(L.target)}function V(L){L.removeEventListener("dispose",R),I(L),H(L),L.isVideoTexture&&u.delete(L),L.isHTMLTexture&&h.delete(L)}function P(L){L.removeEventListener("dispose",U),I(L),st(L)}function F(){for(let L of g){let M=L.deref();M!==void 0&&(M.isRenderTarget===!0?P(M):V(M))}g.clear(),h.clear()}function H(L){let M=n.get(L);if(M.__webglInit===void 0)return;let Y=L.source,mt=f.get(Y);if(mt){let lt=mt[M.__cacheKey];lt.usedTimes--,lt.usedTimes===0&&O(L),Object.keys(mt).length===0&&f.delete(Y)}n.remove(L)}function O(L){let M=n.get(L);i.deleteTexture(M.__webglTexture);let Y=L.source,mt=f.get(Y);delete mt[M.__cacheKey],o.memory.textures--}function st(L){let M=n.get(L);M.__depthDisposeCallback&&M.__depthDisposeCallback();let Y=L.depthTexture;if(Y&&Y.renderTarget===L&&V(Y),L.isWebGLCubeRenderTarget)for(let lt=0;lt<6;lt++){if(Array.isArray(M.__webglFramebuffer[lt]))for(let St=0;St<M.__webglFramebuffer[lt].length;St++)i.deleteFramebuffer(M.__webglFramebuffer[lt][St]);else i.deleteFramebuffer(M.__webglFramebuffer[lt]);M.__webglDepthbuffer&&i.deleteRenderbuffer(M.__webglDepthbuffer[lt])}else{if(Array.isArray(M.__webglFramebuffer))for(let lt=0;lt<M.__webglFramebuffer.length;lt++)i.deleteFramebuffer(M.__webglFramebuffer[lt]);else i.deleteFramebuffer(M.__webglFramebuffer);if(M.__webglDepthbuffer&&i.deleteRenderbuffer(M.__webglDepthbuffer),M.__webglMultisampledFramebuffer&&i.deleteFramebuffer(M.__webglMultisampledFramebuffer),M.__webglColorRenderbuffer)for(let lt=0;lt<M.__webglColorRenderbuffer.length;lt++)M.__webglColorRenderbuffer[lt]&&i.deleteRenderbuffer(M.__webglColorRenderbuffer[lt]);M.__webglDepthRenderbuffer&&i.deleteRenderbuffer(M.__webglDepthRenderbuffer)}let mt=L.textures;for(let lt=0,St=mt.length;lt<St;lt++){let wt=n.get(mt[lt]);wt.__webglTexture&&(i.deleteTexture(wt.__webglTexture),o.memory.textures--),n.remove(mt[lt])}n.remove(L)}let Z=0;function j(){Z=0}function tt(){return Z}function ct(L){Z=L}function at(){let L=Z;return L>=s.maxTextures&&Jt("WebGLTextures: Trying to use "+(L+1)+" texture units while this GPU supports only "+s.maxTextures),Z+=1,L}function $(L){let M=[];return M.push(L.wrapS),M.push(L.wrapT),M.push(L.wrapR||0),M.push(L.magFilter),M.push(L.minFilter),M.push(L.anisotropy),M.push(L.internalFormat),M.push(L.format),M.push(L.type),M.push(L.generateMipmaps),M.push(L.mipmapsAutoUpdate),M.push(L.premultiplyAlpha),M.push(L.flipY),M.push(L.unpackAlignment),M.push(L.colorSpace),M.join()}function dt(L,M){let Y=n.get(L);if(L.isVideoTexture&&Oe(L),L.isRenderTargetTexture===!1&&L.isExternalTexture!==!0&&L.version>0&&Y.__version!==L.version){let mt=L.image;if(mt===null)Jt("WebGLRenderer: Texture marked for update but no image data found.");else if(mt.complete===!1)Jt("WebGLRenderer: Texture marked for update but image is incomplete");else{Ce(Y,L,M);return}}else L.isExternalTexture&&(Y.__webglTexture=L.sourceTexture?L.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,Y.__webglTexture,i.TEXTURE0+M)}function pt(L,M){let Y=n.get(L);if(L.isRenderTargetTexture===!1&&L.version>0&&Y.__version!==L.version){Ce(Y,L,M);return}else L.isExternalTexture&&(Y.__webglTexture=L.sourceTexture?L.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,Y.__webglTexture,i.TEXTURE0+M)}function vt(L,M){let Y=n.get(L);if(L.isRenderTargetTexture===!1&&L.version>0&&Y.__version!==L.version){Ce(Y,L,M);return}e.bindTexture(i.TEXTURE_3D,Y.__webglTexture,i.TEXTURE0+M)}function bt(L,M){let Y=n.get(L);if(L.version>0&&Y.__version!==L.version){on(Y,L,M);return}e.bindTexture(i.TEXTURE_CUBE_MAP,Y.__webglTexture,i.TEXTURE0+M)}let _t={[Xl]:i.REPEAT,[Yi]:i.CLAMP_TO_EDGE,[$l]:i.MIRRORED_REPEAT},Nt={[Cn]:i.NEAREST,[sg]:i.NEAREST_MIPMAP_NEAREST,[ba]:i.NEAREST_MIPMAP_LINEAR,[Jn]:i.LINEAR,[yc]:i.LINEAR_MIPMAP_NEAREST,[ys]:i.LINEAR_MIPMAP_LINEAR},Ut={[lg]:i.NEVER,[pd]:i.ALWAYS,[cg]:i.LESS,[dd]:i.LEQUAL,[hg]:i.EQUAL,[fd]:i.GEQUAL,[ug]:i.GREATER,[dg]:i.NOTEQUAL};function ee(L,M){if(M.type===Fi&&t.has("OES_texture_float_linear")===!1&&(M.magFilter===Jn||M.magFilter===yc||M.magFilter===ba||M.magFilter===ys||M.minFilter===Jn||M.minFilter===yc||M.minFilter===ba||M.minFilter===ys)&&Jt("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(L,i.TEXTURE_WRAP_S,_t[M.wrapS]),i.texParameteri(L,i.TEXTURE_WRAP_T,_t[M.wrapT]),(L===i.TEXTURE_3D||L===i.TEXTURE_2D_ARRAY)&&i.texParameteri(L,i.TEXTURE_WRAP_R,_t[M.wrapR]),i.texParameteri(L,i.TEXTURE_MAG_FILTER,Nt[M.magFilter]),i.texParameteri(L,i.TEXTURE_MIN_FILTER,Nt[M.minFilter]),M.compareFunction&&(i.texParameteri(L,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(L,i.TEXTURE_COMPARE_FUNC,Ut[M.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(M.magFilter===Cn||M.minFilter!==ba&&M.minFilter!==ys||M.type===Fi&&t.has("OES_texture_float_linear")===!1)return;if(M.anisotropy>1||n.get(M).__currentAnisotropy){let Y=t.get("EXT_texture_filter_anisotropic");i.texParameterf(L,Y.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(M.anisotropy,s.getMaxAnisotropy())),n.get(M).__currentAnisotropy=M.anisotropy}}}function he(L,M){let Y=!1;L.__webglInit===void 0&&(L.__webglInit=!0,M.addEventListener("dispose",R),z(M));let mt=M.source,lt=f.get(mt);lt===void 0&&(lt={},f.set(mt,lt));let St=$(M);if(St!==L.__cacheKey){lt[St]===void 0&&(lt[St]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,Y=!0),lt[St].usedTimes++;let wt=lt[L.__cacheKey];wt!==void 0&&(lt[L.__cacheKey].usedTimes--,wt.usedTimes===0&&O(M)),L.__cacheKey=St,L.__webglTexture=lt[St].texture}return Y}function ne(L,M,Y){return Math.floor(Math.floor(L/Y)/M)}function Re(L,M,Y,mt){let St=L.updateRanges;if(St.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,M.width,M.height,Y,mt,M.data);else{St.sort((B,ot)=>B.start-ot.start);let wt=0;for(let B=1;B<St.length;B++){let ot=St[wt],it=St[B],Rt=ot.start+ot.count,Mt=ne(it.start,M.width,4),Tt=ne(ot.start,M.width,4);it.start<=Rt+1&&Mt===Tt&&ne(it.start+it.count-1,M.width,4)===Mt?ot.count=Math.max(ot.count,it.start+it.count-ot.start):(++wt,St[wt]=it)}St.length=wt+1;let nt=e.getParameter(i.UNPACK_ROW_LENGTH),rt=e.getParameter(i.UNPACK_SKIP_PIXELS),yt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,M.width);for(let B=0,ot=St.length;B<ot;B++){let it=St[B],Rt=Math.floor(it.start/4),Mt=Math.ceil(it.count/4),Tt=Rt%M.width,$t=Math.floor(Rt/M.width),Qt=Mt,ft=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,Tt),e.pixelStorei(i.UNPACK_SKIP_ROWS,$t),e.texSubImage2D(i.TEXTURE_2D,0,Tt,$t,Qt,ft,Y,mt,M.data)}L.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,nt),e.pixelStorei(i.UNPACK_SKIP_PIXELS,rt),e.pixelStorei(i.UNPACK_SKIP_ROWS,yt)}}function Ce(L,M,Y){let mt=i.TEXTURE_2D;(M.isDataArrayTexture||M.isCompressedArrayTexture)&&(mt=i.TEXTURE_2D_ARRAY),M.isData3DTexture&&(mt=i.TEXTURE_3D);let lt=he(L,M),St=M.source;e.bindTexture(mt,L.__webglTexture,i.TEXTURE0+Y);let wt=n.get(St);if(St.version!==wt.__version||lt===!0){if(e.activeTexture(i.TEXTURE0+Y),(typeof ImageBitmap<"u"&&M.image instanceof ImageBitmap)===!1){let ft=be.getPrimaries(be.workingColorSpace),Gt=M.colorSpace===bs?null:be.getPrimaries(M.colorSpace),te=M.colorSpace===bs||ft===Gt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,M.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,M.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,te)}e.pixelStorei(i.UNPACK_ALIGNMENT,M.unpackAlignment);let rt=y(M.image,!1,s.maxTextureSize);rt=Xt(M,rt);let yt=r.convert(M.format,M.colorSpace),B=r.convert(M.type),ot=w(M.internalFormat,yt,B,M.normalized,M.colorSpace,M.isVideoTexture);ee(mt,M);let it,Rt=M.mipmaps,Mt=M.isVideoTexture!==!0,Tt=wt.__version===void 0||lt===!0,$t=St.dataReady,Qt=S(M,rt);if(M.isDepthTexture)ot=x(M.format===vs,M.type),Tt&&(Mt?e.texStorage2D(i.TEXTURE_2D,1,ot,rt.width,rt.height):e.texImage2D(i.TEXTURE_2D,0,ot,rt.width,rt.height,0,yt,B,null));else if(M.isDataTexture)if(Rt.length>0){Mt&&Tt&&e.texStorage2D(i.TEXTURE_2D,Qt,ot,Rt[0].width,Rt[0].height);for(let ft=0,Gt=Rt.length;ft<Gt;ft++)it=Rt[ft],Mt?$t&&e.texSubImage2D(i.TEXTURE_2D,ft,0,0,it.width,it.height,yt,B,it.data):e.texImage2D(i.TEXTURE_2D,ft,ot,it.width,it.height,0,yt,B,it.data);M.generateMipmaps=!1}else Mt?(Tt&&e.texStorage2D(i.TEXTURE_2D,Qt,ot,rt.width,rt.height),$t&&Re(M,rt,yt,B)):e.texImage2D(i.TEXTURE_2D,0,ot,rt.width,rt.height,0,yt,B,rt.data);else if(M.isCompressedTexture)if(M.isCompressedArrayTexture){Mt&&Tt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,ot,Rt[0].width,Rt[0].height,rt.depth);for(let ft=0,Gt=Rt.length;ft<Gt;ft++)if(it=Rt[ft],M.format!==Bi)if(yt!==null)if(Mt){if($t)if(M.layerUpdates.size>0){let te=wd(it.width,it.height,M.format,M.type);for(let It of M.layerUpdates){let ue=it.data.subarray(It*te/it.data.BYTES_PER_ELEMENT,(It+1)*te/it.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ft,0,0,It,it.width,it.height,1,yt,ue)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ft,0,0,0,it.width,it.height,rt.depth,yt,it.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,ft,ot,it.width,it.height,rt.depth,0,it.data,0,0);else Jt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else Mt?$t&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,ft,0,0,0,it.width,it.height,rt.depth,yt,B,it.data):e.texImage3D(i.TEXTURE_2D_ARRAY,ft,ot,it.width,it.height,rt.depth,0,yt,B,it.data);M.layerUpdates.size>0&&M.clearLayerUpdates()}else{Mt&&Tt&&e.texStorage2D(i.TEXTURE_2D,Qt,ot,Rt[0].width,Rt[0].height);for(let ft=0,Gt=Rt.length;ft<Gt;ft++)it=Rt[ft],M.format!==Bi?yt!==null?Mt?$t&&e.compressedTexSubImage2D(i.TEXTURE_2D,ft,0,0,it.width,it.height,yt,it.data):e.compressedTexImage2D(i.TEXTURE_2D,ft,ot,it.width,it.height,0,it.data):Jt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):Mt?$t&&e.texSubImage2D(i.TEXTURE_2D,ft,0,0,it.width,it.height,yt,B,it.data):e.texImage2D(i.TEXTURE_2D,ft,ot,it.width,it.height,0,yt,B,it.data)}else if(M.isDataArrayTexture)if(Mt){if(Tt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,ot,rt.width,rt.height,rt.depth),$t)if(M.layerUpdates.size>0){let ft=wd(rt.width,rt.height,M.format,M.type);for(let Gt of M.layerUpdates){let te=rt.data.subarray(Gt*ft/rt.data.BYTES_PER_ELEMENT,(Gt+1)*ft/rt.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Gt,rt.width,rt.height,1,yt,B,te)}M.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,rt.width,rt.height,rt.depth,yt,B,rt.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,ot,rt.width,rt.height,rt.depth,0,yt,B,rt.data);else if(M.isData3DTexture)Mt?(Tt&&e.texStorage3D(i.TEXTURE_3D,Qt,ot,rt.width,rt.height,rt.depth),$t&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,rt.width,rt.height,rt.depth,yt,B,rt.data)):e.texImage3D(i.TEXTURE_3D,0,ot,rt.width,rt.height,rt.depth,0,yt,B,rt.data);else if(M.isFramebufferTexture){if(Tt)if(Mt)e.texStorage2D(i.TEXTURE_2D,Qt,ot,rt.width,rt.height);else{let ft=rt.width,Gt=rt.height;for(let te=0;te<Qt;te++)e.texImage2D(i.TEXTURE_2D,te,ot,ft,Gt,0,yt,B,null),ft>>=1,Gt>>=1}}else if(M.isHTMLTexture){if("texElementImage2D"in i){let ft=i.canvas;if(ft.hasAttribute("layoutsubtree")||ft.setAttribute("layoutsubtree","true"),rt.parentNode!==ft){ft.appendChild(rt),h.add(M),ft.onpaint=Gt=>{let te=Gt.changedElements;for(let It of h)te.includes(It.image)&&(It.needsUpdate=!0)},ft.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,rt);else{let te=i.RGBA,It=i.RGBA,ue=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,te,It,ue,rt)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Rt.length>0){if(Mt&&Tt){let ft=Zt(Rt[0]);e.texStorage2D(i.TEXTURE_2D,Qt,ot,ft.width,ft.height)}for(let ft=0,Gt=Rt.length;ft<Gt;ft++)it=Rt[ft],Mt?$t&&e.texSubImage2D(i.TEXTURE_2D,ft,0,0,yt,B,it):e.texImage2D(i.TEXTURE_2D,ft,ot,yt,B,it);M.generateMipmaps=!1}else if(Mt){if(Tt){let ft=Zt(rt);e.texStorage2D(i.TEXTURE_2D,Qt,ot,ft.width,ft.height)}$t&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,yt,B,rt)}else e.texImage2D(i.TEXTURE_2D,0,ot,yt,B,rt);E(M)&&M.mipmapsAutoUpdate===!0&&b(mt),wt.__version=St.version,M.onUpdate&&M.onUpdate(M)}L.__version=M.version}function on(L,M,Y){if(M.image.length!==6)return;let mt=he(L,M),lt=M.source;e.bindTexture(i.TEXTURE_CUBE_MAP,L.__webglTexture,i.TEXTURE0+Y);let St=n.get(lt);if(lt.version!==St.__version||mt===!0){e.activeTexture(i.TEXTURE0+Y);let wt=be.getPrimaries(be.workingColorSpace),nt=M.colorSpace===bs?null:be.getPrimaries(M.colorSpace),rt=M.colorSpace===bs||wt===nt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,M.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,M.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,M.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,rt);let yt=M.isCompressedTexture||M.image[0].isCompressedTexture,B=M.image[0]&&M.image[0].isDataTexture,ot=[];for(let It=0;It<6;It++)!yt&&!B?ot[It]=y(M.image[It],!0,s.maxCubemapSize):ot[It]=B?M.image[It].image:M.image[It],ot[It]=Xt(M,ot[It]);let it=ot[0],Rt=r.convert(M.format,M.colorSpace),Mt=r.convert(M.type),Tt=w(M.internalFormat,Rt,Mt,M.normalized,M.colorSpace),$t=M.isVideoTexture!==!0,Qt=St.__version===void 0||mt===!0,ft=lt.dataReady,Gt=S(M,it);ee(i.TEXTURE_CUBE_MAP,M);let te;if(M.isDepthTexture){if(Tt=x(M.format===vs,M.type),Qt)if($t)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,Tt,it.width,it.height);else for(let It=0;It<6;It++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,0,Tt,it.width,it.height,0,Rt,Mt,null)}else if(yt){$t&&Qt&&e.texStorage2D(i.TEXTURE_CUBE_MAP,Gt,Tt,it.width,it.height);for(let It=0;It<6;It++){te=ot[It].mipmaps;for(let ue=0;ue<te.length;ue++){let ze=te[ue];M.format!==Bi?Rt!==null?$t?ft&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue,0,0,ze.width,ze.height,Rt,ze.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue,Tt,ze.width,ze.height,0,ze.data):Jt("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):$t?ft&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue,0,0,ze.width,ze.height,Rt,Mt,ze.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue,Tt,ze.width,ze.height,0,Rt,Mt,ze.data)}}}else{if(te=M.mipmaps,$t&&Qt){te.length>0&&Gt++;let It=Zt(ot[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,Gt,Tt,It.width,It.height)}for(let It=0;It<6;It++)if(B){$t?ft&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,0,0,0,ot[It].width,ot[It].height,Rt,Mt,ot[It].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,0,Tt,ot[It].width,ot[It].height,0,Rt,Mt,ot[It].data);for(let ue=0;ue<te.length;ue++){let Gn=te[ue].image[It].image;$t?ft&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue+1,0,0,Gn.width,Gn.height,Rt,Mt,Gn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue+1,Tt,Gn.width,Gn.height,0,Rt,Mt,Gn.data)}}else{$t?ft&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,0,0,0,Rt,Mt,ot[It]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,0,Tt,Rt,Mt,ot[It]);for(let ue=0;ue<te.length;ue++){let ze=te[ue];$t?ft&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue+1,0,0,Rt,Mt,ze.image[It]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+It,ue+1,Tt,Rt,Mt,ze.image[It])}}}E(M)&&M.mipmapsAutoUpdate===!0&&b(i.TEXTURE_CUBE_MAP),St.__version=lt.version,M.onUpdate&&M.onUpdate(M)}L.__version=M.version}function Ue(L,M,Y,mt,lt,St){let wt=r.convert(Y.format,Y.colorSpace),nt=r.convert(Y.type),rt=w(Y.internalFormat,wt,nt,Y.normalized,Y.colorSpace),yt=n.get(M),B=n.get(Y);if(B.__renderTarget=M,!yt.__hasExternalTextures){let ot=Math.max(1,M.width>>St),it=Math.max(1,M.height>>St);lt===i.TEXTURE_3D||lt===i.TEXTURE_2D_ARRAY?e.texImage3D(lt,St,rt,ot,it,M.depth,0,wt,nt,null):e.texImage2D(lt,St,rt,ot,it,0,wt,nt,null)}e.bindFramebuffer(i.FRAMEBUFFER,L),At(M)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,mt,lt,B.__webglTexture,0,ce(M)):(lt===i.TEXTURE_2D||lt>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&lt<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,mt,lt,B.__webglTexture,St),e.bindFramebuffer(i.FRAMEBUFFER,null)}function Mn(L,M,Y){if(i.bindRenderbuffer(i.RENDERBUFFER,L),M.depthBuffer){let mt=M.depthTexture,lt=mt&&mt.isDepthTexture?mt.type:null,St=x(M.stencilBuffer,lt),wt=M.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;At(M)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ce(M),St,M.width,M.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,ce(M),St,M.width,M.height):i.renderbufferStorage(i.RENDERBUFFER,St,M.width,M.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,wt,i.RENDERBUFFER,L)}else{let mt=M.textures;for(let lt=0;lt<mt.length;lt++){let St=mt[lt],wt=r.convert(St.format,St.colorSpace),nt=r.convert(St.type),rt=w(St.internalFormat,wt,nt,St.normalized,St.colorSpace);At(M)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ce(M),rt,M.width,M.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,ce(M),rt,M.width,M.height):i.renderbufferStorage(i.RENDERBUFFER,rt,M.width,M.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function Me(L,M,Y){let mt=M.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,L),!(M.depthTexture&&M.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let lt=n.get(M.depthTexture);lt.__renderTarget=M;let St=mt?M.depthTexture.image[0]:M.depthTexture.image;(!lt.__webglTexture||St.width!==M.width||St.height!==M.height)&&(St.width=M.width,St.height=M.height,M.depthTexture.needsUpdate=!0),mt?bt(M.depthTexture,0):dt(M.depthTexture,0);let wt=lt.__webglTexture,nt=ce(M),rt=mt?i.TEXTURE_CUBE_MAP_POSITIVE_X+Y:i.TEXTURE_2D,yt=M.depthTexture.format===vs?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(M.depthTexture.format===ps)At(M)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,rt,wt,0,nt):i.framebufferTexture2D(i.FRAMEBUFFER,yt,rt,wt,0);else if(M.depthTexture.format===vs)At(M)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,rt,wt,0,nt):i.framebufferTexture2D(i.FRAMEBUFFER,yt,rt,wt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function mn(L){let M=n.get(L),Y=L.isWebGLCubeRenderTarget===!0;if(M.__boundDepthTexture!==L.depthTexture){let mt=L.depthTexture;if(M.__depthDisposeCallback&&M.__depthDisposeCallback(),mt){let lt=()=>{delete M.__boundDepthTexture,delete M.__depthDisposeCallback,mt.removeEventListener("dispose",lt)};mt.addEventListener("dispose",lt),M.__depthDisposeCallback=lt}M.__boundDepthTexture=mt}if(L.depthTexture&&!M.__autoAllocateDepthBuffer)if(Y)for(let mt=0;mt<6;mt++)Me(M.__webglFramebuffer[mt],L,mt);else L.texture.mipmaps.length>0?Me(M.__webglFramebuffer[0],L,0):Me(M.__webglFramebuffer,L,0);else if(Y){M.__webglDepthbuffer=[];for(let mt=0;mt<6;mt++)if(e.bindFramebuffer(i.FRAMEBUFFER,M.__webglFramebuffer[mt]),M.__webglDepthbuffer[mt]===void 0)M.__webglDepthbuffer[mt]=i.createRenderbuffer(),Mn(M.__webglDepthbuffer[mt],L,!1);else{let lt=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,St=M.__webglDepthbuffer[mt];i.bindRenderbuffer(i.RENDERBUFFER,St),i.framebufferRenderbuffer(i.FRAMEBUFFER,lt,i.RENDERBUFFER,St)}}else if(L.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,M.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,M.__webglFramebuffer),M.__webglDepthbuffer===void 0)M.__webglDepthbuffer=i.createRenderbuffer(),Mn(M.__webglDepthbuffer,L,!1);else{let lt=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,St=M.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,St),i.framebufferRenderbuffer(i.FRAMEBUFFER,lt,i.RENDERBUFFER,St)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Je(L,M,Y){let mt=n.get(L);M!==void 0&&Ue(mt.__webglFramebuffer,L,L.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),Y!==void 0&&mn(L)}function an(L){let M=L.texture,Y=n.get(L),mt=n.get(M);L.addEventListener("dispose",U),z(L);let lt=L.textures,St=L.isWebGLCubeRenderTarget===!0,wt=lt.length>1;if(wt||(mt.__webglTexture===void 0&&(mt.__webglTexture=i.createTexture()),mt.__version=M.version,o.memory.textures++),St){Y.__webglFramebuffer=[];for(let nt=0;nt<6;nt++)if(M.mipmaps.length>0){Y.__webglFramebuffer[nt]=[];for(let rt=0;rt<M.mipmaps.length;rt++)Y.__webglFramebuffer[nt][rt]=i.createFramebuffer()}else Y.__webglFramebuffer[nt]=i.createFramebuffer()}else{if(M.mipmaps.length>0){Y.__webglFramebuffer=[];for(let nt=0;nt<M.mipmaps.length;nt++)Y.__webglFramebuffer[nt]=i.createFramebuffer()}else Y.__webglFramebuffer=i.createFramebuffer();if(wt)for(let nt=0,rt=lt.length;nt<rt;nt++){let yt=n.get(lt[nt]);yt.__webglTexture===void 0&&(yt.__webglTexture=i.createTexture(),o.memory.textures++)}if(L.samples>0&&At(L)===!1){Y.__webglMultisampledFramebuffer=i.createFramebuffer(),Y.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,Y.__webglMultisampledFramebuffer);for(let nt=0;nt<lt.length;nt++){let rt=lt[nt];Y.__webglColorRenderbuffer[nt]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,Y.__webglColorRenderbuffer[nt]);let yt=r.convert(rt.format,rt.colorSpace),B=r.convert(rt.type),ot=w(rt.internalFormat,yt,B,rt.normalized,rt.colorSpace,L.isXRRenderTarget===!0),it=ce(L);i.renderbufferStorageMultisample(i.RENDERBUFFER,it,ot,L.width,L.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+nt,i.RENDERBUFFER,Y.__webglColorRenderbuffer[nt])}i.bindRenderbuffer(i.RENDERBUFFER,null),L.depthBuffer&&(Y.__webglDepthRenderbuffer=i.createRenderbuffer(),Mn(Y.__webglDepthRenderbuffer,L,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(St){e.bindTexture(i.TEXTURE_CUBE_MAP,mt.__webglTexture),ee(i.TEXTURE_CUBE_MAP,M);for(let nt=0;nt<6;nt++)if(M.mipmaps.length>0)for(let rt=0;rt<M.mipmaps.length;rt++)Ue(Y.__webglFramebuffer[nt][rt],L,M,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+nt,rt);else Ue(Y.__webglFramebuffer[nt],L,M,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+nt,0);E(M)?b(i.TEXTURE_CUBE_MAP):M.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,M.mipmaps.length-1),e.unbindTexture()}else if(wt){for(let nt=0,rt=lt.length;nt<rt;nt++){let yt=lt[nt],B=n.get(yt),ot=i.TEXTURE_2D;(L.isWebGL3DRenderTarget||L.isWebGLArrayRenderTarget)&&(ot=L.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(ot,B.__webglTexture),ee(ot,yt),Ue(Y.__webglFramebuffer,L,yt,i.COLOR_ATTACHMENT0+nt,ot,0),E(yt)&&b(ot)}e.unbindTexture()}else{let nt=i.TEXTURE_2D;if((L.isWebGL3DRenderTarget||L.isWebGLArrayRenderTarget)&&(nt=L.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(nt,mt.__webglTexture),ee(nt,M),M.mipmaps.length>0)for(let rt=0;rt<M.mipmaps.length;rt++)Ue(Y.__webglFramebuffer[rt],L,M,i.COLOR_ATTACHMENT0,nt,rt);else Ue(Y.__webglFramebuffer,L,M,i.COLOR_ATTACHMENT0,nt,0);E(M)?b(nt):M.mipmaps.length>0&&i.texParameteri(nt,i.TEXTURE_MAX_LEVEL,M.mipmaps.length-1),e.unbindTexture()}L.depthBuffer&&mn(L)}function k(L){let M=L.textures;for(let Y=0,mt=M.length;Y<mt;Y++){let lt=M[Y];if(E(lt)&&lt.mipmapsAutoUpdate===!0){let St=C(L),wt=n.get(lt).__webglTexture;e.bindTexture(St,wt),b(St),e.unbindTexture()}}}let Lt=[];function jt(L){if(L.samples>0){if(At(L)===!1){let M=L.textures,Y=L.width,mt=L.height,lt=i.COLOR_BUFFER_BIT,St=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,wt=n.get(L),nt=M.length>1;if(nt)for(let yt=0;yt<M.length;yt++)e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,wt.__webglMultisampledFramebuffer),L.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglFramebuffer);for(let yt=0;yt<M.length;yt++){if(L.resolveDepthBuffer&&(L.depthBuffer&&(lt|=i.DEPTH_BUFFER_BIT),L.stencilBuffer&&L.resolveStencilBuffer&&(lt|=i.STENCIL_BUFFER_BIT)),nt){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,wt.__webglColorRenderbuffer[yt]);let B=n.get(M[yt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,B,0)}i.blitFramebuffer(0,0,Y,mt,0,0,Y,mt,lt,i.NEAREST),l===!0&&(Lt.length=0,Lt.push(i.COLOR_ATTACHMENT0+yt),L.depthBuffer&&L.storeMultisampledDepthBuffer===!1&&Lt.push(St),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,Lt))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),nt)for(let yt=0;yt<M.length;yt++){e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.RENDERBUFFER,wt.__webglColorRenderbuffer[yt]);let B=n.get(M[yt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.TEXTURE_2D,B,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglMultisampledFramebuffer)}else if(L.depthBuffer&&L.storeMultisampledDepthBuffer===!1&&l){let M=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[M])}}}function ce(L){return Math.min(s.maxSamples,L.samples)}function At(L){let M=n.get(L);return L.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&M.__useRenderToTexture!==!1}function Oe(L){let M=o.render.frame;u.get(L)!==M&&(u.set(L,M),L.update())}function Xt(L,M){let Y=L.colorSpace,mt=L.format,lt=L.type;return L.isCompressedTexture===!0||L.isVideoTexture===!0||Y!==Ko&&Y!==bs&&(be.getTransfer(Y)===Ie?(mt!==Bi||lt!==ti)&&Jt("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):se("WebGLTextures: Unsupported texture color space:",Y)),M}function Zt(L){return typeof HTMLImageElement<"u"&&L instanceof HTMLImageElement?(c.width=L.naturalWidth||L.width,c.height=L.naturalHeight||L.height):typeof VideoFrame<"u"&&L instanceof VideoFrame?(c.width=L.displayWidth,c.height=L.displayHeight):(c.width=L.width,c.height=L.height),c}this.allocateTextureUnit=at,this.resetTextureUnits=j,this.getTextureUnits=tt,this.setTextureUnits=ct,this.setTexture2D=dt,this.setTexture2DArray=pt,this.setTexture3D=vt,this.setTextureCube=bt,this.rebindTextures=Je,this.setupRenderTarget=an,this.updateRenderTargetMipmap=k,this.updateMultisampleRenderTarget=jt,this.setupDepthRenderbuffer=mn,this.setupFrameBufferTexture=Ue,this.useMultisampledRTT=At,this.dispose=F}function Ew(i,t){function e(n,s=bs){let r,o=be.getTransfer(s);if(n===ti)return i.UNSIGNED_BYTE;if(n===bc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===Mc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===ad)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===ld)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===rd)return i.BYTE;if(n===od)return i.SHORT;if(n===xo)return i.UNSIGNED_SHORT;if(n===vc)return i.INT;if(n===Ui)return i.UNSIGNED_INT;if(n===Fi)return i.FLOAT;if(n===Oi)return i.HALF_FLOAT;if(n===cd)return i.ALPHA;if(n===hd)return i.RGB;if(n===Bi)return i.RGBA;if(n===ps)return i.DEPTH_COMPONENT;if(n===vs)return i.DEPTH_STENCIL;if(n===ud)return i.RED;if(n===Sc)return i.RED_INTEGER;if(n===qs)return i.RG;if(n===wc)return i.RG_INTEGER;if(n===Ec)return i.RGBA_INTEGER;if(n===Ma||n===Sa||n===wa||n===Ea)if(o===Ie)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Ma)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Sa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===wa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Ea)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Ma)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Sa)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===wa)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Ea)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===Tc||n===Ac||n===Rc||n===Cc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===Tc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===Ac)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===Rc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Cc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Pc||n===Ic||n===Lc||n===Dc||n===Nc||n===Ta||n===Uc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Pc||n===Ic)return o===Ie?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===Lc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===Dc)return r.COMPRESSED_R11_EAC;if(n===Nc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Ta)return r.COMPRESSED_RG11_EAC;if(n===Uc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Fc||n===Oc||n===Bc||n===kc||n===zc||n===Vc||n===Gc||n===Hc||n===Wc||n===Xc||n===$c||n===qc||n===Yc||n===Zc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Fc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Oc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Bc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===kc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===zc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Vc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Gc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Hc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Wc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Xc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===$c)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===qc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Yc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Zc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Jc||n===jc||n===Kc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Jc)return o===Ie?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===jc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Kc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Qc||n===th||n===Aa||n===eh)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===Qc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===th)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Aa)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===eh)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===_r?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var Tw=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Aw=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Dd=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new ha(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Zi({vertexShader:Tw,fragmentShader:Aw,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new Pn(new fr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},Nd=class extends Di{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,u=null,h=null,d=null,f=null,g=null,_=typeof XRWebGLBinding<"u",p=new Dd,m={},y=e.getContextAttributes(),E=null,b=null,C=[],w=[],x=new re,S=null,z=null,I=new Zn;I.viewport=new Ye;let R=new Zn;R.viewport=new Ye;let U=[I,R],V=new mc,P=null,F=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function($){let dt=C[$];return dt===void 0&&(dt=new co,C[$]=dt),dt.getTargetRaySpace()},this.getControllerGrip=function($){let dt=C[$];return dt===void 0&&(dt=new co,C[$]=dt),dt.getGripSpace()},this.getHand=function($){let dt=C[$];return dt===void 0&&(dt=new co,C[$]=dt),dt.getHandSpace()};function H($){let dt=w.indexOf($.inputSource);if(dt===-1)return;let pt=C[dt];pt!==void 0&&(pt.update($.inputSource,$.frame,c||o),pt.dispatchEvent({type:$.type,data:$.inputSource}))}function O(){s.removeEventListener("select",H),s.removeEventListener("selectstart",H),s.removeEventListener("selectend",H),s.removeEventListener("squeeze",H),s.removeEventListener("squeezestart",H),s.removeEventListener("squeezeend",H),s.removeEventListener("end",O),s.removeEventListener("inputsourceschange",st);for(let $=0;$<C.length;$++){let dt=w[$];dt!==null&&(w[$]=null,C[$].disconnect(dt))}P=null,F=null,p.reset();for(let $ in m)delete m[$];if(t.setRenderTarget(E),f=null,d=null,h=null,s=null,b=null,at.stop(),n.isPresenting=!1,t.setPixelRatio(S),t.setSize(x.width,x.height,!1),z!==null){let $=z.camera;$.fov=z.fov,$.zoom=z.zoom,$.updateProjectionMatrix(),z=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function($){r=$,n.isPresenting===!0&&Jt("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function($){a=$,n.isPresenting===!0&&Jt("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function($){c=$},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return h===null&&_&&(h=new XRWebGLBinding(s,e)),h},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function($){if(s=$,s!==null){if(E=t.getRenderTarget(),s.addEventListener("select",H),s.addEventListener("selectstart",H),s.addEventListener("selectend",H),s.addEventListener("squeeze",H),s.addEventListener("squeezestart",H),s.addEventListener("squeezeend",H),s.addEventListener("end",O),s.addEventListener("inputsourceschange",st),y.xrCompatible!==!0&&await e.makeXRCompatible(),S=t.getPixelRatio(),t.getSize(x),_&&"createProjectionLayer"in XRWebGLBinding.prototype){let pt=null,vt=null,bt=null;y.depth&&(bt=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,pt=y.stencil?vs:ps,vt=y.stencil?_r:Ui);let _t={colorFormat:e.RGBA8,depthFormat:bt,scaleFactor:r};h=this.getBinding(),d=h.createProjectionLayer(_t),s.updateRenderState({layers:[d]}),t.setPixelRatio(1),t.setSize(d.textureWidth,d.textureHeight,!1),b=new fi(d.textureWidth,d.textureHeight,{format:Bi,type:ti,depthTexture:new xs(d.textureWidth,d.textureHeight,vt,void 0,void 0,void 0,void 0,void 0,void 0,pt),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let pt={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,pt),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),b=new fi(f.framebufferWidth,f.framebufferHeight,{format:Bi,type:ti,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),at.setContext(s),at.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return p.getDepthTexture()};function st($){for(let dt=0;dt<$.removed.length;dt++){let pt=$.removed[dt],vt=w.indexOf(pt);vt>=0&&(w[vt]=null,C[vt].disconnect(pt))}for(let dt=0;dt<$.added.length;dt++){let pt=$.added[dt],vt=w.indexOf(pt);if(vt===-1){for(let _t=0;_t<C.length;_t++)if(_t>=w.length){w.push(pt),vt=_t;break}else if(w[_t]===null){w[_t]=pt,vt=_t;break}if(vt===-1)break}let bt=C[vt];bt&&bt.connect(pt)}}function Z($,dt){dt===null?$.matrixWorld.copy($.matrix):$.matrixWorld.multiplyMatrices(dt.matrixWorld,$.matrix),$.matrixWorldInverse.copy($.matrixWorld).invert()}this.updateCamera=function($){if(s===null)return;let dt=$.near,pt=$.far;p.texture!==null&&(p.depthNear>0&&(dt=p.depthNear),p.depthFar>0&&(pt=p.depthFar)),V.near=R.near=I.near=dt,V.far=R.far=I.far=pt,(P!==V.near||F!==V.far)&&(s.updateRenderState({depthNear:V.near,depthFar:V.far}),P=V.near,F=V.far),V.layers.mask=$.layers.mask|6,I.layers.mask=V.layers.mask&-5,R.layers.mask=V.layers.mask&-3;let vt=$.parent,bt=V.cameras;Z(V,vt);for(let _t=0;_t<bt.length;_t++)Z(bt[_t],vt);V.projectionMatrix.copy(I.projectionMatrix),V.projectionMatrixInverse.copy(I.projectionMatrixInverse),z===null&&$.isPerspectiveCamera&&(z={camera:$,fov:$.fov,zoom:$.zoom}),j($,V,vt)};function j($,dt,pt){pt===null?$.matrix.copy(dt.matrixWorld):($.matrix.copy(pt.matrixWorld),$.matrix.invert(),$.matrix.multiply(dt.matrixWorld)),$.matrix.decompose($.position,$.quaternion,$.scale),$.updateMatrixWorld(!0),$.projectionMatrix.copy(dt.projectionMatrix),$.projectionMatrixInverse.copy(dt.projectionMatrixInverse),$.isPerspectiveCamera&&($.fov=ao*2*Math.atan(1/$.projectionMatrix.elements[5]),$.zoom=1)}this.getCamera=function(){return V},this.getFoveation=function(){if(!(d===null&&f===null))return l},this.setFoveation=function($){l=$,d!==null&&(d.fixedFoveation=$),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=$)},this.hasDepthSensing=function(){return p.texture!==null},this.getDepthSensingMesh=function(){return p.getMesh(V)},this.getCameraTexture=function($){return m[$]};let tt=null;function ct($,dt){if(u=dt.getViewerPose(c||o),g=dt,u!==null){let pt=u.views;f!==null&&(t.setRenderTargetFramebuffer(b,f.framebuffer),t.setRenderTarget(b));let vt=!1;pt.length!==V.cameras.length&&(V.cameras.length=0,vt=!0);for(let Ut=0;Ut<pt.length;Ut++){let ee=pt[Ut],he=null;if(f!==null)he=f.getViewport(ee);else{let Re=h.getViewSubImage(d,ee);he=Re.viewport,Ut===0&&(t.setRenderTargetTextures(b,Re.colorTexture,Re.depthStencilTexture),t.setRenderTarget(b))}let ne=U[Ut];ne===void 0&&(ne=new Zn,ne.layers.enable(Ut),ne.viewport=new Ye,U[Ut]=ne),ne.matrix.fromArray(ee.transform.matrix),ne.matrix.decompose(ne.position,ne.quaternion,ne.scale),ne.projectionMatrix.fromArray(ee.projectionMatrix),ne.projectionMatrixInverse.copy(ne.projectionMatrix).invert(),ne.viewport.set(he.x,he.y,he.width,he.height),Ut===0&&(V.matrix.copy(ne.matrix),V.matrix.decompose(V.position,V.quaternion,V.scale)),vt===!0&&V.cameras.push(ne)}let bt=s.enabledFeatures;if(bt&&bt.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&_){h=n.getBinding();let Ut=h.getDepthInformation(pt[0]);Ut&&Ut.isValid&&Ut.texture&&p.init(Ut,s.renderState)}if(bt&&bt.includes("camera-access")&&_){t.state.unbindTexture(),h=n.getBinding();for(let Ut=0;Ut<pt.length;Ut++){let ee=pt[Ut].camera;if(ee){let he=m[ee];he||(he=new ha,m[ee]=he);let ne=h.getCameraImage(ee);he.sourceTexture=ne}}}}for(let pt=0;pt<C.length;pt++){let vt=w[pt],bt=C[pt];vt!==null&&bt!==void 0&&bt.update(vt,dt,c||o)}tt&&tt($,dt),dt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:dt}),g=null}let at=new Xg;at.setAnimationLoop(ct),this.setAnimationLoop=function($){tt=$},this.dispose=function(){}}},Rw=new $e,e0=new oe;e0.set(-1,0,0,0,1,0,0,0,1);function Cw(i,t){function e(p,m){p.matrixAutoUpdate===!0&&p.updateMatrix(),m.value.copy(p.matrix)}function n(p,m){m.color.getRGB(p.fogColor.value,bd(i)),m.isFog?(p.fogNear.value=m.near,p.fogFar.value=m.far):m.isFogExp2&&(p.fogDensity.value=m.density)}function s(p,m,y,E,b){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?r(p,m):m.isMeshLambertMaterial?(r(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(r(p,m),h(p,m)):m.isMeshPhongMaterial?(r(p,m),u(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(r(p,m),d(p,m),m.isMeshPhysicalMaterial&&f(p,m,b)):m.isMeshMatcapMaterial?(r(p,m),g(p,m)):m.isMeshDepthMaterial?r(p,m):m.isMeshDistanceMaterial?(r(p,m),_(p,m)):m.isMeshNormalMaterial?r(p,m):m.isLineBasicMaterial?(o(p,m),m.isLineDashedMaterial&&a(p,m)):m.isPointsMaterial?l(p,m,y,E):m.isSpriteMaterial?c(p,m):m.isShadowMaterial?(p.color.value.copy(m.color),p.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function r(p,m){p.opacity.value=m.opacity,m.color&&p.diffuse.value.copy(m.color),m.emissive&&p.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.bumpMap&&(p.bumpMap.value=m.bumpMap,e(m.bumpMap,p.bumpMapTransform),p.bumpScale.value=m.bumpScale,m.side===Dn&&(p.bumpScale.value*=-1)),m.normalMap&&(p.normalMap.value=m.normalMap,e(m.normalMap,p.normalMapTransform),p.normalScale.value.copy(m.normalScale),m.side===Dn&&p.normalScale.value.negate()),m.displacementMap&&(p.displacementMap.value=m.displacementMap,e(m.displacementMap,p.displacementMapTransform),p.displacementScale.value=m.displacementScale,p.displacementBias.value=m.displacementBias),m.emissiveMap&&(p.emissiveMap.value=m.emissiveMap,e(m.emissiveMap,p.emissiveMapTransform)),m.specularMap&&(p.specularMap.value=m.specularMap,e(m.specularMap,p.specularMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest);let y=t.get(m),E=y.envMap,b=y.envMapRotation;E&&(p.envMap.value=E,p.envMapRotation.value.setFromMatrix4(Rw.makeRotationFromEuler(b)).transpose(),E.isCubeTexture&&E.isRenderTargetTexture===!1&&p.envMapRotation.value.premultiply(e0),p.reflectivity.value=m.reflectivity,p.ior.value=m.ior,p.refractionRatio.value=m.refractionRatio),m.lightMap&&(p.lightMap.value=m.lightMap,p.lightMapIntensity.value=m.lightMapIntensity,e(m.lightMap,p.lightMapTransform)),m.aoMap&&(p.aoMap.value=m.aoMap,p.aoMapIntensity.value=m.aoMapIntensity,e(m.aoMap,p.aoMapTransform))}function o(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform))}function a(p,m){p.dashSize.value=m.dashSize,p.totalSize.value=m.dashSize+m.gapSize,p.scale.value=m.scale}function l(p,m,y,E){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.size.value=m.size*y,p.scale.value=E*.5,m.map&&(p.map.value=m.map,e(m.map,p.uvTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function c(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.rotation.value=m.rotation,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function u(p,m){p.specular.value.copy(m.specular),p.shininess.value=Math.max(m.shininess,1e-4)}function h(p,m){m.gradientMap&&(p.gradientMap.value=m.gradientMap)}function d(p,m){p.metalness.value=m.metalness,m.metalnessMap&&(p.metalnessMap.value=m.metalnessMap,e(m.metalnessMap,p.metalnessMapTransform)),p.roughness.value=m.roughness,m.roughnessMap&&(p.roughnessMap.value=m.roughnessMap,e(m.roughnessMap,p.roughnessMapTransform)),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)}function f(p,m,y){p.ior.value=m.ior,m.diffuseRoughness>0&&(p.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(p.diffuseRoughnessMap.value=m.diffuseRoughnessMap,e(m.diffuseRoughnessMap,p.diffuseRoughnessMapTransform))),m.sheen>0&&(p.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),p.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(p.sheenColorMap.value=m.sheenColorMap,e(m.sheenColorMap,p.sheenColorMapTransform)),m.sheenRoughnessMap&&(p.sheenRoughnessMap.value=m.sheenRoughnessMap,e(m.sheenRoughnessMap,p.sheenRoughnessMapTransform))),m.clearcoat>0&&(p.clearcoat.value=m.clearcoat,p.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(p.clearcoatMap.value=m.clearcoatMap,e(m.clearcoatMap,p.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(p.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,e(m.clearcoatRoughnessMap,p.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(p.clearcoatNormalMap.value=m.clearcoatNormalMap,e(m.clearcoatNormalMap,p.clearcoatNormalMapTransform),p.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===Dn&&p.clearcoatNormalScale.value.negate())),m.dispersion>0&&(p.dispersion.value=m.dispersion),m.retroreflectivity>0&&(p.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(p.iridescence.value=m.iridescence,p.iridescenceIOR.value=m.iridescenceIOR,p.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,p.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(p.iridescenceMap.value=m.iridescenceMap,e(m.iridescenceMap,p.iridescenceMapTransform)),m.iridescenceThicknessMap&&(p.iridescenceThicknessMap.value=m.iridescenceThicknessMap,e(m.iridescenceThicknessMap,p.iridescenceThicknessMapTransform))),m.transmission>0&&(p.transmission.value=m.transmission,p.transmissionSamplerMap.value=y.texture,p.transmissionSamplerSize.value.set(y.width,y.height),m.transmissionMap&&(p.transmissionMap.value=m.transmissionMap,e(m.transmissionMap,p.transmissionMapTransform)),p.thickness.value=m.thickness,m.thicknessMap&&(p.thicknessMap.value=m.thicknessMap,e(m.thicknessMap,p.thicknessMapTransform)),p.attenuationDistance.value=m.attenuationDistance,p.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(p.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(p.anisotropyMap.value=m.anisotropyMap,e(m.anisotropyMap,p.anisotropyMapTransform))),p.specularIntensity.value=m.specularIntensity,p.specularColor.value.copy(m.specularColor),m.specularColorMap&&(p.specularColorMap.value=m.specularColorMap,e(m.specularColorMap,p.specularColorMapTransform)),m.specularIntensityMap&&(p.specularIntensityMap.value=m.specularIntensityMap,e(m.specularIntensityMap,p.specularIntensityMapTransform))}function g(p,m){m.matcap&&(p.matcap.value=m.matcap)}function _(p,m){let y=t.get(m).light;p.referencePosition.value.setFromMatrixPosition(y.matrixWorld),p.nearDistance.value=y.shadow.camera.near,p.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Pw(i,t,e,n){let s={},r={};function o(y,E){let b=E.program;n.uniformBlockBinding(y,b,s[y.id])}function a(y,E){let b=s[y.id];b===void 0&&(g(y),b=l(y),s[y.id]=b,y.addEventListener("dispose",p));let C=E.program;n.updateUBOMapping(y,C);let w=t.render.frame;r[y.id]!==w&&(c(y),r[y.id]=w)}function l(y){let E=i.createBuffer(),b=y.__size,C=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,E),i.bufferData(i.UNIFORM_BUFFER,b,C),i.bindBuffer(i.UNIFORM_BUFFER,null),E}function c(y){let E=s[y.id],b=y.uniforms,C=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,E);for(let w=0,x=b.length;w<x;w++){let S=b[w];if(Array.isArray(S))for(let z=0,I=S.length;z<I;z++)u(S[z],w,z,C);else u(S,w,0,C)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function u(y,E,b,C){if(d(y,E,b,C)===!0){let w=y.__offset,x=y.value;if(Array.isArray(x)){let S=0;for(let z=0;z<x.length;z++){let I=x[z],R=_(I,!0);h(I,y.__data,S),S+=R.storage/Float32Array.BYTES_PER_ELEMENT}}else h(x,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,y.__data)}}function h(y,E,b){typeof y=="number"||typeof y=="boolean"?E[b]=y:y.isMatrix3?(E[b]=y.elements[0],E[b+1]=y.elements[1],E[b+2]=y.elements[2],E[b+3]=0,E[b+4]=y.elements[3],E[b+5]=y.elements[4],E[b+6]=y.elements[5],E[b+7]=0,E[b+8]=y.elements[6],E[b+9]=y.elements[7],E[b+10]=y.elements[8],E[b+11]=0):ArrayBuffer.isView(y)?E.set(y.subarray(0,E.length-b),b):y.toArray(E,b)}function d(y,E,b,C){let w=y.value,x=E+"_"+b;if(Array.isArray(w)){C[x]===void 0&&(C[x]=[]);let S=C[x],z=!1;for(let I=0;I<w.length;I++)f(w[I],S,I)===!0&&(z=!0);return z}return f(w,C,x)}function f(y,E,b){if(E[b]===void 0)return typeof y=="number"||typeof y=="boolean"?E[b]=y:ArrayBuffer.isView(y)?E[b]=y.slice():E[b]=y.clone(),!0;{let C=E[b];if(typeof y=="number"||typeof y=="boolean"){if(C!==y)return E[b]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(C.equals(y)===!1)return C.copy(y),!0}}return!1}function g(y){let E=y.uniforms,b=0,C=16;for(let x=0,S=E.length;x<S;x++){let z=Array.isArray(E[x])?E[x]:[E[x]];for(let I=0,R=z.length;I<R;I++){let U=z[I],V=Array.isArray(U.value)?U.value:[U.value],P=Array.isArray(E[x])||Array.isArray(U.value),F=b;for(let O=0,st=V.length;O<st;O++){let Z=V[O],j=_(Z,P),tt=b%C,ct=tt%j.boundary,at=tt+ct;b+=ct,at!==0&&C-at<j.storage&&(b+=C-at),O===0&&(F=b),b+=j.storage}let H=U.type==="int"?Int32Array:U.type==="uint"?Uint32Array:Float32Array;U.__data=new H((b-F)/Float32Array.BYTES_PER_ELEMENT),U.__offset=F}}let w=b%C;return w>0&&(b+=C-w),y.__size=b,y.__cache={},this}function _(y,E){let b={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(b.boundary=4,b.storage=4):y.isVector2?(b.boundary=8,b.storage=8):y.isVector3||y.isColor?(b.boundary=16,b.storage=12):y.isVector4?(b.boundary=16,b.storage=16):y.isMatrix3?(b.boundary=16,b.storage=48):y.isMatrix4?(b.boundary=16,b.storage=64):y.isTexture?Jt("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(b.boundary=16,b.storage=y.byteLength):Jt("WebGLRenderer: Unsupported uniform value type.",y),E===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function p(y){let E=y.target;E.removeEventListener("dispose",p),i.deleteBuffer(s[E.id]),delete s[E.id],delete r[E.id]}function m(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:m}}var Iw=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),ji=null;function Lw(){return ji===null&&(ji=new jl(Iw,16,16,qs,Oi),ji.name="DFG_LUT",ji.minFilter=Jn,ji.magFilter=Jn,ji.wrapS=Yi,ji.wrapT=Yi,ji.generateMipmaps=!1,ji.needsUpdate=!0),ji}var oh=class{constructor(t={}){let{canvas:e=pg(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:h=!1,reversedDepthBuffer:d=!1,outputBufferType:f=ti}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let _=f,p=new Set([Ec,wc,Sc]),m=new Set([ti,Ui,xo,_r,bc,Mc]),y=new Uint32Array(4),E=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},C=null,w=null,x=[],S=[],z=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Ji,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let I=this,R=!1,U=null,V=null,P=null,F=null;this._outputColorSpace=ui;let H=0,O=0,st=null,Z=-1,j=null,tt=new Ye,ct=new Ye,at=null,$=new le(0),dt=0,pt=e.width,vt=e.height,bt=1,_t=null,Nt=null,Ut=new Ye(0,0,pt,vt),ee=new Ye(0,0,pt,vt),he=!1,ne=new zs,Re=new Kl,Ce=!1,on=!1,Ue=new $e,Mn=new X,Me=new Ye,mn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Je=!1;function an(){return st===null?bt:1}let k=n;function Lt(A,G){return e.getContext(A,G)}let jt,ce,At,Oe,Xt,Zt,L,M,Y,mt,lt,St,wt,nt,rt,yt,B,ot,it,Rt,Mt,Tt,$t;try{let A={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:u,failIfMajorPerformanceCaveat:h};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",Gt,!1),e.addEventListener("webglcontextrestored",te,!1),e.addEventListener("webglcontextcreationerror",It,!1),k===null){let G="webgl2";if(k=Lt(G,A),k===null)throw Lt(G)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Qt()}catch(A){throw e.removeEventListener("webglcontextlost",Gt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",It,!1),se("WebGLRenderer: "+A.message),A}function Qt(){jt=new HM(k),jt.init(),Mt=new Ew(k,jt),ce=new LM(k,jt,t,Mt),At=new Sw(k,jt),ce.reversedDepthBuffer&&d&&At.buffers.depth.setReversed(!0),V=k.createFramebuffer(),P=k.createFramebuffer(),F=k.createFramebuffer(),Oe=new $M(k),Xt=new cw,Zt=new ww(k,jt,At,Xt,ce,Mt,Oe),L=new GM(I),M=new Yy(k),Tt=new PM(k,M),Y=new WM(k,M,Oe,Tt),mt=new YM(k,Y,M,Tt,Oe),ot=new qM(k,ce,Zt),rt=new DM(Xt),lt=new lw(I,L,jt,ce,Tt,rt),St=new Cw(I,Xt),wt=new uw,nt=new _w(jt),B=new CM(I,L,At,mt,g,l),yt=new Mw(I,mt,ce),$t=new Pw(k,Oe,ce,At),it=new IM(k,jt,Oe),Rt=new XM(k,jt,Oe),Oe.programs=lt.programs,I.capabilities=ce,I.extensions=jt,I.properties=Xt,I.renderLists=wt,I.shadowMap=yt,I.state=At,I.info=Oe}_!==ti&&(z=new JM(_,e.width,e.height,a,s,r));let ft=new Nd(I,k);this.xr=ft,this.getContext=function(){return k},this.getContextAttributes=function(){return k.getContextAttributes()},this.forceContextLoss=function(){let A=jt.get("WEBGL_lose_context");A&&A.loseContext()},this.forceContextRestore=function(){let A=jt.get("WEBGL_lose_context");A&&A.restoreContext()},this.getPixelRatio=function(){return bt},this.setPixelRatio=function(A){A!==void 0&&(bt=A,this.setSize(pt,vt,!1))},this.getSize=function(A){return A.set(pt,vt)},this.setSize=function(A,G,et=!0){if(ft.isPresenting){Jt("WebGLRenderer: Can't change size while VR device is presenting.");return}pt=A,vt=G,e.width=Math.floor(A*bt),e.height=Math.floor(G*bt),et===!0&&(e.style.width=A+"px",e.style.height=G+"px"),z!==null&&z.setSize(e.width,e.height),this.setViewport(0,0,A,G)},this.getDrawingBufferSize=function(A){return A.set(pt*bt,vt*bt).floor()},this.setDrawingBufferSize=function(A,G,et){pt=A,vt=G,bt=et,e.width=Math.floor(A*et),e.height=Math.floor(G*et),this.setViewport(0,0,A,G)},this.setEffects=function(A){if(_===ti){se("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(A){for(let G=0;G<A.length;G++)if(A[G].isOutputPass===!0){Jt("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}z.setEffects(A||[])},this.getCurrentViewport=function(A){return A.copy(tt)},this.getViewport=function(A){return A.copy(Ut)},this.setViewport=function(A,G,et,J){A.isVector4?Ut.set(A.x,A.y,A.z,A.w):Ut.set(A,G,et,J),At.viewport(tt.copy(Ut).multiplyScalar(an()).round())},this.getScissor=function(A){return A.copy(ee)},this.setScissor=function(A,G,et,J){A.isVector4?ee.set(A.x,A.y,A.z,A.w):ee.set(A,G,et,J),At.scissor(ct.copy(ee).multiplyScalar(an()).round())},this.getScissorTest=function(){return he},this.setScissorTest=function(A){At.setScissorTest(he=A)},this.setOpaqueSort=function(A){_t=A},this.setTransparentSort=function(A){Nt=A},this.getClearColor=function(A){return A.copy(B.getClearColor())},this.setClearColor=function(){B.setClearColor(...arguments)},this.getClearAlpha=function(){return B.getClearAlpha()},this.setClearAlpha=function(){B.setClearAlpha(...arguments)},this.clear=function(A=!0,G=!0,et=!0){let J=0;if(A){let K=!1;if(st!==null){let Ct=st.texture.format;K=p.has(Ct)}if(K){let Ct=st.texture.type,Dt=m.has(Ct),Pt=B.getClearColor(),Ft=B.getClearAlpha(),Wt=Pt.r,ie=Pt.g,me=Pt.b;Dt?(y[0]=Wt,y[1]=ie,y[2]=me,y[3]=Ft,k.clearBufferuiv(k.COLOR,0,y)):(E[0]=Wt,E[1]=ie,E[2]=me,E[3]=Ft,k.clearBufferiv(k.COLOR,0,E))}else J|=k.COLOR_BUFFER_BIT}G&&(J|=k.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),et&&(J|=k.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),J!==0&&k.clear(J)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(A){A.setRenderer(this),U=A},this.dispose=function(){e.removeEventListener("webglcontextlost",Gt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",It,!1),B.dispose(),wt.dispose(),nt.dispose(),Zt.dispose(),Xt.dispose(),L.dispose(),mt.dispose(),Y.dispose(),Tt.dispose(),$t.dispose(),lt.dispose(),ft.dispose(),ft.removeEventListener("sessionstart",Fa),ft.removeEventListener("sessionend",ki),Qi.stop()};function Gt(A){A.preventDefault(),gd("WebGLRenderer: Context Lost."),R=!0}function te(){gd("WebGLRenderer: Context Restored."),R=!1;let A=Oe.autoReset,G=yt.enabled,et=yt.autoUpdate,J=yt.needsUpdate,K=yt.type;Qt(),Oe.autoReset=A,yt.enabled=G,yt.autoUpdate=et,yt.needsUpdate=J,yt.type=K}function It(A){se("WebGLRenderer: A WebGL context could not be created. Reason: ",A.statusMessage)}function ue(A){let G=A.target;G.removeEventListener("dispose",ue),ze(G)}function ze(A){Gn(A),Xt.remove(A)}function Gn(A){let G=Xt.get(A).programs;G!==void 0&&(G.forEach(function(et){lt.releaseProgram(et)}),A.isShaderMaterial&&lt.releaseShaderCache(A))}this.renderBufferDirect=function(A,G,et,J,K,Ct){G===null&&(G=mn);let Dt=K.isMesh&&K.matrixWorld.determinantAffine()<0,Pt=Eo(A,G,et,J,K);At.setMaterial(J,Dt);let Ft=et.index,Wt=1;if(J.wireframe===!0){if(Ft=Y.getWireframeAttribute(et),Ft===void 0)return;Wt=2}let ie=et.drawRange,me=et.attributes.position,Ht=ie.start*Wt,ge=(ie.start+ie.count)*Wt;Ct!==null&&(Ht=Math.max(Ht,Ct.start*Wt),ge=Math.min(ge,(Ct.start+Ct.count)*Wt)),Ft!==null?(Ht=Math.max(Ht,0),ge=Math.min(ge,Ft.count)):me!=null&&(Ht=Math.max(Ht,0),ge=Math.min(ge,me.count));let Ze=ge-Ht;if(Ze<0||Ze===1/0)return;Tt.setup(K,J,Pt,et,Ft);let Le,De=it;if(Ft!==null&&(Le=M.get(Ft),De=Rt,De.setIndex(Le)),K.isMesh)J.wireframe===!0?(At.setLineWidth(J.wireframeLinewidth*an()),De.setMode(k.LINES)):De.setMode(k.TRIANGLES);else if(K.isLine){let gn=J.linewidth;gn===void 0&&(gn=1),At.setLineWidth(gn*an()),K.isLineSegments?De.setMode(k.LINES):K.isLineLoop?De.setMode(k.LINE_LOOP):De.setMode(k.LINE_STRIP)}else K.isPoints?De.setMode(k.POINTS):K.isSprite&&De.setMode(k.TRIANGLES);if(K.isBatchedMesh)if(jt.get("WEBGL_multi_draw"))De.renderMultiDraw(K._multiDrawStarts,K._multiDrawCounts,K._multiDrawCount);else{let gn=K._multiDrawStarts,zt=K._multiDrawCounts,ln=K._multiDrawCount,ye=Ft?M.get(Ft).bytesPerElement:1,es=Xt.get(J).currentProgram.getUniforms();for(let cn=0;cn<ln;cn++)es.setValue(k,"_gl_DrawID",cn),De.render(gn[cn]/ye,zt[cn])}else if(K.isInstancedMesh)De.renderInstances(Ht,Ze,K.count);else if(et.isInstancedBufferGeometry){let gn=et._maxInstanceCount!==void 0?et._maxInstanceCount:1/0,zt=Math.min(et.instanceCount,gn);De.renderInstances(Ht,Ze,zt)}else De.render(Ht,Ze)};function Mo(A,G,et,J){U!==null&&A.isNodeMaterial&&U.setObject(J,A),Ce===!0&&rt.setState(A,et,!1),A.transparent===!0&&A.side===jn&&A.forceSinglePass===!1?(A.side=Dn,A.needsUpdate=!0,zi(A,G,J),A.side=Ni,A.needsUpdate=!0,zi(A,G,J),A.side=jn):zi(A,G,J)}this.compile=function(A,G,et=null){et===null&&(et=A),U!==null&&U.renderStart(A,G,et),w=nt.get(et),w.init(G),S.push(w),et.traverseVisible(function(K){K.isLight&&K.layers.test(G.layers)&&(w.pushLight(K),K.castShadow&&w.pushShadow(K))}),A!==et&&A.traverseVisible(function(K){K.isLight&&K.layers.test(G.layers)&&(w.pushLight(K),K.castShadow&&w.pushShadow(K))}),w.setupLights(),U!==null&&U.updateLights(w.state.lightsArray),on=this.localClippingEnabled,Ce=rt.init(this.clippingPlanes,on),Ce===!0&&rt.setGlobalState(this.clippingPlanes,G),U!==null&&yt.render(w.state.shadowsArray,et,G);let J=new Set;return A.traverse(function(K){if(!(K.isMesh||K.isPoints||K.isLine||K.isSprite))return;let Ct=K.material;if(Ct)if(Array.isArray(Ct))for(let Dt=0;Dt<Ct.length;Dt++){let Pt=Ct[Dt];Mo(Pt,et,G,K),J.add(Pt)}else Mo(Ct,et,G,K),J.add(Ct)}),w=S.pop(),U!==null&&U.renderEnd(),J},this.compileAsync=function(A,G,et=null){let J=this.compile(A,G,et);return new Promise(K=>{function Ct(){if(J.forEach(function(Dt){let Ft=Xt.get(Dt).currentProgram;(Ft===void 0||Ft.isReady())&&J.delete(Dt)}),J.size===0){K(A);return}setTimeout(Ct,10)}jt.get("KHR_parallel_shader_compile")!==null?Ct():setTimeout(Ct,10)})};let vr=null;function Sh(A){vr&&vr(A)}function Fa(){Qi.stop()}function ki(){Qi.start()}let Qi=new Xg;Qi.setAnimationLoop(Sh),typeof self<"u"&&Qi.setContext(self),this.setAnimationLoop=function(A){vr=A,ft.setAnimationLoop(A),A===null?Qi.stop():Qi.start()},ft.addEventListener("sessionstart",Fa),ft.addEventListener("sessionend",ki),this.render=function(A,G){if(G!==void 0&&G.isCamera!==!0){se("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(R===!0)return;U!==null&&U.renderStart(A,G);let et=ft.enabled===!0&&ft.isPresenting===!0,J=z!==null&&(st===null||et)&&z.begin(I,st);if(A.matrixWorldAutoUpdate===!0&&A.updateMatrixWorld(),G.parent===null&&G.matrixWorldAutoUpdate===!0&&G.updateMatrixWorld(),ft.enabled===!0&&ft.isPresenting===!0&&(z===null||z.isCompositing()===!1)&&(ft.cameraAutoUpdate===!0&&ft.updateCamera(G),G=ft.getCamera()),A.isScene===!0&&A.onBeforeRender(I,A,G,st),w=nt.get(A,S.length),w.init(G),w.state.textureUnits=Zt.getTextureUnits(),S.push(w),Ue.multiplyMatrices(G.projectionMatrix,G.matrixWorldInverse),G.isArrayCamera?Re.setFromArrayCamera(G):ne.setFromProjectionMatrix(Ue,bi,G.reversedDepth),on=this.localClippingEnabled,Ce=rt.init(this.clippingPlanes,on),C=wt.get(A,x.length),C.init(),x.push(C),this.info.render.frame++,ft.enabled===!0&&ft.isPresenting===!0){let Dt=I.xr.getDepthSensingMesh();Dt!==null&&ts(Dt,G,-1/0,I.sortObjects)}ts(A,G,0,I.sortObjects),C.finish(),U!==null&&U.updateLights(w.state.lightsArray),I.sortObjects===!0&&C.sort(_t,Nt),Je=ft.enabled===!1||ft.isPresenting===!1||ft.hasDepthSensing()===!1,Je&&B.addToRenderList(C,A),this.info.autoReset===!0&&this.info.reset(),Ce===!0&&rt.beginShadows();let K=w.state.shadowsArray;if(yt.render(K,A,G),Ce===!0&&rt.endShadows(),(J&&z.hasRenderPass())===!1){let Dt=C.opaque,Pt=C.transmissive;if(w.setupLights(),G.isArrayCamera){let Ft=G.cameras;if(Pt.length>0)for(let Wt=0,ie=Ft.length;Wt<ie;Wt++){let me=Ft[Wt];Mi(Dt,Pt,A,me)}Je&&B.render(A);for(let Wt=0,ie=Ft.length;Wt<ie;Wt++){let me=Ft[Wt];So(C,A,me,me.viewport)}}else Pt.length>0&&Mi(Dt,Pt,A,G),Je&&B.render(A),So(C,A,G)}st!==null&&O===0&&(Zt.updateMultisampleRenderTarget(st),Zt.updateRenderTargetMipmap(st)),J&&z.end(I),A.isScene===!0&&A.onAfterRender(I,A,G),Tt.resetDefaultState(),Z=-1,j=null,S.pop(),S.length>0?(w=S[S.length-1],Zt.setTextureUnits(w.state.textureUnits),Ce===!0&&rt.setGlobalState(I.clippingPlanes,w.state.camera)):w=null,x.pop(),x.length>0?C=x[x.length-1]:C=null,U!==null&&U.renderEnd()};function ts(A,G,et,J){if(A.visible===!1)return;if(A.layers.test(G.layers)){if(A.isGroup)et=A.renderOrder;else if(A.isLOD)A.autoUpdate===!0&&A.update(G);else if(A.isLight)w.pushLight(A),A.castShadow&&w.pushShadow(A);else if(A.isSprite){let Dt=G.isArrayCamera?Re:ne;if(!A.frustumCulled||A.intersectsFrustum(Dt)){J&&Me.setFromMatrixPosition(A.matrixWorld).applyMatrix4(Ue);let Pt=mt.update(A),Ft=A.material;Ft.visible&&C.push(A,Pt,Ft,et,Me.z,null,G)}}else if(A.isMesh||A.isLine||A.isPoints){let Dt=G.isArrayCamera?Re:ne;if(!A.frustumCulled||A.intersectsFrustum(Dt)){let Pt=mt.update(A),Ft=A.material;if(J&&(A.boundingSphere!==void 0?(A.boundingSphere===null&&A.computeBoundingSphere(),Me.copy(A.boundingSphere.center)):(Pt.boundingSphere===null&&Pt.computeBoundingSphere(),Me.copy(Pt.boundingSphere.center)),Me.applyMatrix4(A.matrixWorld).applyMatrix4(Ue)),Array.isArray(Ft)){let Wt=Pt.groups;for(let ie=0,me=Wt.length;ie<me;ie++){let Ht=Wt[ie],ge=Ft[Ht.materialIndex];ge&&ge.visible&&C.push(A,Pt,ge,et,Me.z,Ht,G)}}else Ft.visible&&C.push(A,Pt,Ft,et,Me.z,null,G)}}}let Ct=A.children;for(let Dt=0,Pt=Ct.length;Dt<Pt;Dt++)ts(Ct[Dt],G,et,J)}function So(A,G,et,J){let{opaque:K,transmissive:Ct,transparent:Dt}=A;w.setupLightsView(et),Ce===!0&&rt.setGlobalState(I.clippingPlanes,et),J&&At.viewport(tt.copy(J)),K.length>0&&je(K,G,et),Ct.length>0&&je(Ct,G,et),Dt.length>0&&je(Dt,G,et),At.buffers.depth.setTest(!0),At.buffers.depth.setMask(!0),At.buffers.color.setMask(!0),At.setPolygonOffset(!1)}function Mi(A,G,et,J){if((et.isScene===!0?et.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[J.id]===void 0){let Ht=jt.has("EXT_color_buffer_half_float")||jt.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[J.id]=new fi(1,1,{generateMipmaps:!0,type:Ht?Oi:ti,minFilter:ys,samples:Math.max(4,ce.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:be.workingColorSpace})}let Ct=w.state.transmissionRenderTarget[J.id],Dt=J.viewport||tt;Ct.setSize(Dt.z*I.transmissionResolutionScale,Dt.w*I.transmissionResolutionScale);let Pt=I.getRenderTarget(),Ft=I.getActiveCubeFace(),Wt=I.getActiveMipmapLevel();I.setRenderTarget(Ct),I.getClearColor($),dt=I.getClearAlpha(),dt<1&&I.setClearColor(16777215,.5),I.clear(),Je&&B.render(et);let ie=I.toneMapping;I.toneMapping=Ji;let me=J.viewport;if(J.viewport!==void 0&&(J.viewport=void 0),w.setupLightsView(J),Ce===!0&&rt.setGlobalState(I.clippingPlanes,J),je(A,et,J),Zt.updateMultisampleRenderTarget(Ct),Zt.updateRenderTargetMipmap(Ct),jt.has("WEBGL_multisampled_render_to_texture")===!1){let Ht=!1;for(let ge=0,Ze=G.length;ge<Ze;ge++){let Le=G[ge],{object:De,geometry:gn,material:zt,group:ln}=Le;if(zt.side===jn&&De.layers.test(J.layers)){let ye=zt.side;zt.side=Dn,zt.needsUpdate=!0,nn(De,et,J,gn,zt,ln),zt.side=ye,zt.needsUpdate=!0,Ht=!0}}Ht===!0&&(Zt.updateMultisampleRenderTarget(Ct),Zt.updateRenderTargetMipmap(Ct))}I.setRenderTarget(Pt,Ft,Wt),I.setClearColor($,dt),me!==void 0&&(J.viewport=me),I.toneMapping=ie}function je(A,G,et){let J=G.isScene===!0?G.overrideMaterial:null;for(let K=0,Ct=A.length;K<Ct;K++){let Dt=A[K],{object:Pt,geometry:Ft,group:Wt}=Dt,ie=Dt.material;ie.allowOverride===!0&&J!==null&&(ie=J),Pt.layers.test(et.layers)&&nn(Pt,G,et,Ft,ie,Wt)}}function nn(A,G,et,J,K,Ct){U!==null&&K.isNodeMaterial&&U.setObject(A,K),A.onBeforeRender(I,G,et,J,K,Ct),A.modelViewMatrix.multiplyMatrices(et.matrixWorldInverse,A.matrixWorld),A.normalMatrix.getNormalMatrix(A.modelViewMatrix),K.onBeforeRender(I,G,et,J,A,Ct),K.transparent===!0&&K.side===jn&&K.forceSinglePass===!1?(K.side=Dn,K.needsUpdate=!0,I.renderBufferDirect(et,G,J,K,A,Ct),K.side=Ni,K.needsUpdate=!0,I.renderBufferDirect(et,G,J,K,A,Ct),K.side=jn):I.renderBufferDirect(et,G,J,K,A,Ct),A.onAfterRender(I,G,et,J,K,Ct)}function sn(A){let G=0;for(let et of A)et.texture!==null&&G++;return G}function zi(A,G,et){G.isScene!==!0&&(G=mn);let J=Xt.get(A),K=w.state.lights,Ct=w.state.shadowsArray,Dt=K.state.version,Pt=lt.getParameters(A,K.state,Ct,G,et,w.state.lightProbeGridArray),Ft=lt.getProgramCacheKey(Pt),Wt=J.programs;J.environment=A.isMeshStandardMaterial||A.isMeshLambertMaterial||A.isMeshPhongMaterial?G.environment:null,J.fog=G.fog;let ie=A.isMeshStandardMaterial||A.isMeshLambertMaterial&&!A.envMap||A.isMeshPhongMaterial&&!A.envMap;J.envMap=L.get(A.envMap||J.environment,ie),J.envMapRotation=J.environment!==null&&A.envMap===null?G.environmentRotation:A.envMapRotation,Wt===void 0&&(A.addEventListener("dispose",ue),Wt=new Map,J.programs=Wt,J.programVariants=new Map);let me=Wt.get(Ft);if(me!==void 0){if(J.currentProgram===me&&J.lightsStateVersion===Dt)return wo(A,Pt),me}else Pt.uniforms=lt.getUniforms(A),U!==null&&A.isNodeMaterial&&U.build(A,et,Pt),A.onBeforeCompile(Pt,I),me=lt.acquireProgram(Pt,Ft),Wt.set(Ft,me),J.uniforms=Pt.uniforms;let Ht=J.uniforms;return(!A.isShaderMaterial&&!A.isRawShaderMaterial||A.clipping===!0)&&(Ht.clippingPlanes=rt.uniform),wo(A,Pt),J.needsLights=Ss(A),J.lightsStateVersion=Dt,J.needsLights&&(Ht.ambientLightColor.value=K.state.ambient,Ht.lightProbe.value=K.state.probe,Ht.sunLights.value=K.state.sun,Ht.sunLightShadows.value=K.state.sunShadow,Ht.directionalLights.value=K.state.directional,Ht.directionalLightShadows.value=K.state.directionalShadow,Ht.spotLights.value=K.state.spot,Ht.spotLightShadows.value=K.state.spotShadow,Ht.rectAreaLights.value=K.state.rectArea,Ht.ltc_1.value=K.state.rectAreaLTC1,Ht.ltc_2.value=K.state.rectAreaLTC2,Ht.pointLights.value=K.state.point,Ht.pointLightShadows.value=K.state.pointShadow,Ht.hemisphereLights.value=K.state.hemi,Ht.sunShadowMatrix.value=K.state.sunShadowMatrix,Ht.sunShadowCascade.value=K.state.sunShadowCascade,Ht.directionalShadowMatrix.value=K.state.directionalShadowMatrix,Ht.spotLightMatrix.value=K.state.spotLightMatrix,Ht.spotLightMap.value=K.state.spotLightMap,Ht.pointShadowMatrix.value=K.state.pointShadowMatrix),J.numLightProbeGrids=sn(w.state.lightProbeGridArray),J.currentProgram=me,J.uniformsList=null,me}function ni(A,G,et,J,K){let Ct=Xt.get(A),Dt=Ct.currentProgram.id+","+J+","+K,Pt=Ct.programVariants.get(Dt);return Pt===void 0?(Pt=zi(A,G,et),Ct.programVariants.set(Dt,Pt)):(Ct.currentProgram=Pt,Ct.uniformsList=null,Ct.outputColorSpace=J,Ct.toneMapping=K),Pt}function Ms(A){if(A.uniformsList===null){let G=A.currentProgram.getUniforms();A.uniformsList=vo.seqWithValue(G.seq,A.uniforms)}return A.uniformsList}function wo(A,G){let et=Xt.get(A);et.outputColorSpace=G.outputColorSpace,et.batching=G.batching,et.batchingColor=G.batchingColor,et.instancing=G.instancing,et.instancingColor=G.instancingColor,et.instancingMorph=G.instancingMorph,et.skinning=G.skinning,et.morphTargets=G.morphTargets,et.morphNormals=G.morphNormals,et.morphColors=G.morphColors,et.morphTargetsCount=G.morphTargetsCount,et.numClippingPlanes=G.numClippingPlanes,et.numIntersection=G.numClipIntersection,et.vertexAlphas=G.vertexAlphas,et.vertexTangents=G.vertexTangents,et.toneMapping=G.toneMapping}function Eo(A,G,et,J,K){G.isScene!==!0&&(G=mn),Zt.resetTextureUnits();let Ct=G.fog,Dt=J.isMeshStandardMaterial||J.isMeshLambertMaterial||J.isMeshPhongMaterial?G.environment:null,Pt=st===null?I.outputColorSpace:st.isXRRenderTarget===!0?st.texture.colorSpace:be.workingColorSpace,Ft=J.isMeshStandardMaterial||J.isMeshLambertMaterial&&!J.envMap||J.isMeshPhongMaterial&&!J.envMap,Wt=L.get(J.envMap||Dt,Ft),ie=J.vertexColors===!0&&!!et.attributes.color&&et.attributes.color.itemSize===4,me=!!et.attributes.tangent&&(!!J.normalMap||J.anisotropy>0),Ht=!!et.morphAttributes.position,ge=!!et.morphAttributes.normal,Ze=!!et.morphAttributes.color,Le=Ji;J.toneMapped&&(st===null||st.isXRRenderTarget===!0)&&(Le=I.toneMapping);let De=et.morphAttributes.position||et.morphAttributes.normal||et.morphAttributes.color,gn=De!==void 0?De.length:0,zt=Xt.get(J),ln=w.state.lights;if(Ce===!0&&(on===!0||A!==j)){let Ne=A===j&&J.id===Z;rt.setState(J,A,Ne)}let ye=!1,es=!1;J.version===zt.__version?zt.needsLights&&zt.lightsStateVersion!==ln.state.version||K.isBatchedMesh&&zt.batching===!1||!K.isBatchedMesh&&zt.batching===!0||K.isBatchedMesh&&zt.batchingColor===!0&&K._colorsTexture===null||K.isBatchedMesh&&zt.batchingColor===!1&&K._colorsTexture!==null||K.isInstancedMesh&&zt.instancing===!1||!K.isInstancedMesh&&zt.instancing===!0||K.isSkinnedMesh&&zt.skinning===!1||!K.isSkinnedMesh&&zt.skinning===!0||K.isInstancedMesh&&zt.instancingColor===!0&&K.instanceColor===null||K.isInstancedMesh&&zt.instancingColor===!1&&K.instanceColor!==null||K.isInstancedMesh&&zt.instancingMorph===!0&&K.morphTexture===null||K.isInstancedMesh&&zt.instancingMorph===!1&&K.morphTexture!==null||zt.envMap!==Wt||J.fog===!0&&zt.fog!==Ct||zt.numClippingPlanes!==void 0&&(zt.numClippingPlanes!==rt.numPlanes||zt.numIntersection!==rt.numIntersection)||zt.vertexAlphas!==ie||zt.vertexTangents!==me||zt.morphTargets!==Ht||zt.morphNormals!==ge||zt.morphColors!==Ze||zt.morphTargetsCount!==gn||zt.numLightProbeGrids!==sn(w.state.lightProbeGridArray)?ye=!0:(zt.outputColorSpace!==Pt||zt.toneMapping!==Le)&&(es=!0):(ye=!0,zt.__version=J.version);let cn=zt.currentProgram;(ye===!0||es===!0)&&(cn=es===!0?ni(J,G,K,Pt,Le):zi(J,G,K),U&&J.isNodeMaterial&&U.onUpdateProgram(J,cn,zt));let Sr=!1,Vi=!1,ns=!1,de=cn.getUniforms(),Ke=zt.uniforms;if(At.useProgram(cn.program)&&(Sr=!0,Vi=!0,ns=!0),J.id!==Z&&(Z=J.id,Vi=!0),Sr||j!==A){At.buffers.depth.getReversed()&&A.reversedDepth!==!0&&(A._reversedDepth=!0,A.updateProjectionMatrix()),de.setValue(k,"projectionMatrix",A.projectionMatrix),de.setValue(k,"viewMatrix",A.matrixWorldInverse);let hn=de.map.cameraPosition;hn!==void 0&&hn.setValue(k,Mn.setFromMatrixPosition(A.matrixWorld)),ce.logarithmicDepthBuffer&&de.setValue(k,"logDepthBufFC",2/(Math.log(A.far+1)/Math.LN2)),(J.isMeshPhongMaterial||J.isMeshToonMaterial||J.isMeshLambertMaterial||J.isMeshBasicMaterial||J.isMeshStandardMaterial||J.isShaderMaterial)&&de.setValue(k,"isOrthographic",A.isOrthographicCamera===!0),j!==A&&(j=A,Vi=!0,ns=!0)}if(zt.needsLights&&(ln.state.sunShadowMap.length>0&&de.setValue(k,"sunShadowMap",ln.state.sunShadowMap,Zt),ln.state.directionalShadowMap.length>0&&de.setValue(k,"directionalShadowMap",ln.state.directionalShadowMap,Zt),ln.state.spotShadowMap.length>0&&de.setValue(k,"spotShadowMap",ln.state.spotShadowMap,Zt),ln.state.pointShadowMap.length>0&&de.setValue(k,"pointShadowMap",ln.state.pointShadowMap,Zt)),K.isSkinnedMesh){de.setOptional(k,K,"bindMatrix"),de.setOptional(k,K,"bindMatrixInverse");let Ne=K.skeleton;Ne&&(Ne.boneTexture===null&&Ne.computeBoneTexture(),de.setValue(k,"boneTexture",Ne.boneTexture,Zt))}K.isBatchedMesh&&(de.setOptional(k,K,"batchingTexture"),de.setValue(k,"batchingTexture",K._matricesTexture,Zt),de.setOptional(k,K,"batchingIdTexture"),de.setValue(k,"batchingIdTexture",K._indirectTexture,Zt),de.setOptional(k,K,"batchingColorTexture"),K._colorsTexture!==null&&de.setValue(k,"batchingColorTexture",K._colorsTexture,Zt));let Hn=et.morphAttributes;if((Hn.position!==void 0||Hn.normal!==void 0||Hn.color!==void 0)&&ot.update(K,et,cn),(Vi||zt.receiveShadow!==K.receiveShadow)&&(zt.receiveShadow=K.receiveShadow,de.setValue(k,"receiveShadow",K.receiveShadow)),(J.isMeshStandardMaterial||J.isMeshLambertMaterial||J.isMeshPhongMaterial)&&J.envMap===null&&G.environment!==null&&(Ke.envMapIntensity.value=G.environmentIntensity),Ke.dfgLUT!==void 0&&(Ke.dfgLUT.value=Lw()),Vi){if(de.setValue(k,"toneMappingExposure",I.toneMappingExposure),zt.needsLights&&br(Ke,ns),Ct&&J.fog===!0&&St.refreshFogUniforms(Ke,Ct),St.refreshMaterialUniforms(Ke,J,bt,vt,w.state.transmissionRenderTarget[A.id]),zt.needsLights&&zt.numLightProbeGrids>0){let Ne=b,hn=0;for(let Nn of w.state.lightProbeGridArray)Nn.texture!==null&&(Ne.textures[hn]=Nn.texture,Ne.min[hn]=Nn.boundingBox.min,Ne.max[hn]=Nn.boundingBox.max,Ne.resolution[hn]=Nn.resolution,hn++);for(let Nn in Ne)Ne[Nn].length=hn;Ke.probesSH.value=Ne.textures,Ke.probesMin.value=Ne.min,Ke.probesMax.value=Ne.max,Ke.probesResolution.value=Ne.resolution}vo.upload(k,Ms(zt),Ke,Zt)}if(J.isShaderMaterial&&J.uniformsNeedUpdate===!0&&(vo.upload(k,Ms(zt),Ke,Zt),J.uniformsNeedUpdate=!1),J.isSpriteMaterial&&de.setValue(k,"center",K.center),de.setValue(k,"modelViewMatrix",K.modelViewMatrix),de.setValue(k,"normalMatrix",K.normalMatrix),de.setValue(k,"modelMatrix",K.matrixWorld),J.uniformsGroups!==void 0){let Ne=J.uniformsGroups;for(let hn=0,Nn=Ne.length;hn<Nn;hn++){let Oa=Ne[hn];$t.update(Oa,cn),$t.bind(Oa,cn)}}return cn}function br(A,G){A.ambientLightColor.needsUpdate=G,A.lightProbe.needsUpdate=G,A.sunLights.needsUpdate=G,A.sunLightShadows.needsUpdate=G,A.directionalLights.needsUpdate=G,A.directionalLightShadows.needsUpdate=G,A.pointLights.needsUpdate=G,A.pointLightShadows.needsUpdate=G,A.spotLights.needsUpdate=G,A.spotLightShadows.needsUpdate=G,A.rectAreaLights.needsUpdate=G,A.hemisphereLights.needsUpdate=G}function Ss(A){return A.isMeshLambertMaterial||A.isMeshToonMaterial||A.isMeshPhongMaterial||A.isMeshStandardMaterial||A.isShadowMaterial||A.isShaderMaterial&&A.lights===!0}this.getActiveCubeFace=function(){return H},this.getActiveMipmapLevel=function(){return O},this.getRenderTarget=function(){return st},this.setRenderTargetTextures=function(A,G,et){let J=Xt.get(A);J.__autoAllocateDepthBuffer=A.resolveDepthBuffer===!1,J.__autoAllocateDepthBuffer===!1&&(J.__useRenderToTexture=!1),Xt.get(A.texture).__webglTexture=G,Xt.get(A.depthTexture).__webglTexture=J.__autoAllocateDepthBuffer?void 0:et,J.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(A,G){let et=Xt.get(A);et.__webglFramebuffer=G,et.__useDefaultFramebuffer=G===void 0},this.setRenderTarget=function(A,G=0,et=0){st=A,H=G,O=et;let J=null,K=!1,Ct=!1;if(A){let Pt=Xt.get(A);if(Pt.__useDefaultFramebuffer!==void 0){At.bindFramebuffer(k.FRAMEBUFFER,Pt.__webglFramebuffer),tt.copy(A.viewport),ct.copy(A.scissor),at=A.scissorTest,At.viewport(tt),At.scissor(ct),At.setScissorTest(at),Z=-1;return}else if(Pt.__webglFramebuffer===void 0)Zt.setupRenderTarget(A);else if(Pt.__hasExternalTextures)Zt.rebindTextures(A,Xt.get(A.texture).__webglTexture,Xt.get(A.depthTexture).__webglTexture);else if(A.depthBuffer){let ie=A.depthTexture;if(Pt.__boundDepthTexture!==ie){if(ie!==null&&Xt.has(ie)&&(A.width!==ie.image.width||A.height!==ie.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Zt.setupDepthRenderbuffer(A)}}let Ft=A.texture;(Ft.isData3DTexture||Ft.isDataArrayTexture||Ft.isCompressedArrayTexture)&&(Ct=!0);let Wt=Xt.get(A).__webglFramebuffer;A.isWebGLCubeRenderTarget?(Array.isArray(Wt[G])?J=Wt[G][et]:J=Wt[G],K=!0):A.samples>0&&Zt.useMultisampledRTT(A)===!1?J=Xt.get(A).__webglMultisampledFramebuffer:Array.isArray(Wt)?J=Wt[et]:J=Wt,tt.copy(A.viewport),ct.copy(A.scissor),at=A.scissorTest}else tt.copy(Ut).multiplyScalar(bt).floor(),ct.copy(ee).multiplyScalar(bt).floor(),at=he;if(et!==0&&(J=V),At.bindFramebuffer(k.FRAMEBUFFER,J)&&At.drawBuffers(A,J),At.viewport(tt),At.scissor(ct),At.setScissorTest(at),K){let Pt=Xt.get(A.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_CUBE_MAP_POSITIVE_X+G,Pt.__webglTexture,et)}else if(Ct){let Pt=G;for(let Ft=0;Ft<A.textures.length;Ft++){let Wt=Xt.get(A.textures[Ft]);k.framebufferTextureLayer(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0+Ft,Wt.__webglTexture,et,Pt)}}else if(A!==null&&et!==0){let Pt=Xt.get(A.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,Pt.__webglTexture,et)}Z=-1};function Mr(A){let G=Xt.get(A);return(G.__readFormat!==A.format||G.__readType!==A.type)&&(G.__readFormat=A.format,G.__readType=A.type,G.__formatReadable=ce.textureFormatReadable(A.format),G.__typeReadable=ce.textureTypeReadable(A.type)),G}this.readRenderTargetPixels=function(A,G,et,J,K,Ct,Dt,Pt=0){if(!(A&&A.isWebGLRenderTarget)){se("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Ft=Xt.get(A).__webglFramebuffer;if(A.isWebGLCubeRenderTarget&&Dt!==void 0&&(Ft=Ft[Dt],Array.isArray(Ft)&&(Ft=Ft[0])),Ft){At.bindFramebuffer(k.FRAMEBUFFER,Ft);try{let Wt=A.textures[Pt],ie=Wt.format,me=Wt.type;A.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+Pt);let Ht=Mr(Wt);if(Ht.__formatReadable===!1){se("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Ht.__typeReadable===!1){se("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}G>=0&&G<=A.width-J&&et>=0&&et<=A.height-K&&k.readPixels(G,et,J,K,Mt.convert(ie),Mt.convert(me),Ct)}finally{let Wt=st!==null?Xt.get(st).__webglFramebuffer:null;At.bindFramebuffer(k.FRAMEBUFFER,Wt)}}},this.readRenderTargetPixelsAsync=async function(A,G,et,J,K,Ct,Dt,Pt=0){if(!(A&&A.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Ft=Xt.get(A).__webglFramebuffer;if(A.isWebGLCubeRenderTarget&&Dt!==void 0&&(Ft=Ft[Dt],Array.isArray(Ft)&&(Ft=Ft[0])),Ft)if(G>=0&&G<=A.width-J&&et>=0&&et<=A.height-K){At.bindFramebuffer(k.FRAMEBUFFER,Ft);let Wt=A.textures[Pt],ie=Wt.format,me=Wt.type;A.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+Pt);let Ht=Mr(Wt);if(Ht.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Ht.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ge=k.createBuffer();k.bindBuffer(k.PIXEL_PACK_BUFFER,ge),k.bufferData(k.PIXEL_PACK_BUFFER,Ct.byteLength,k.STREAM_READ),k.readPixels(G,et,J,K,Mt.convert(ie),Mt.convert(me),0),k.bindBuffer(k.PIXEL_PACK_BUFFER,null);let Ze=st!==null?Xt.get(st).__webglFramebuffer:null;At.bindFramebuffer(k.FRAMEBUFFER,Ze);let Le=k.fenceSync(k.SYNC_GPU_COMMANDS_COMPLETE,0);return k.flush(),await gg(k,Le,4),k.bindBuffer(k.PIXEL_PACK_BUFFER,ge),k.getBufferSubData(k.PIXEL_PACK_BUFFER,0,Ct),k.bindBuffer(k.PIXEL_PACK_BUFFER,null),k.deleteBuffer(ge),k.deleteSync(Le),Ct}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(A,G=null,et=0){let J=Math.pow(2,-et),K=Math.floor(A.image.width*J),Ct=Math.floor(A.image.height*J),Dt=G!==null?G.x:0,Pt=G!==null?G.y:0;Zt.setTexture2D(A,0),k.copyTexSubImage2D(k.TEXTURE_2D,et,0,0,Dt,Pt,K,Ct),At.unbindTexture()},this.copyTextureToTexture=function(A,G,et=null,J=null,K=0,Ct=0){let Dt,Pt,Ft,Wt,ie,me,Ht,ge,Ze,Le=A.isCompressedTexture?A.mipmaps[Ct]:A.image;if(et!==null)Dt=et.max.x-et.min.x,Pt=et.max.y-et.min.y,Ft=et.isBox3?et.max.z-et.min.z:1,Wt=et.min.x,ie=et.min.y,me=et.isBox3?et.min.z:0;else{let de=Math.pow(2,-K);Dt=Math.floor(Le.width*de),Pt=Math.floor(Le.height*de),A.isDataArrayTexture?Ft=Le.depth:A.isData3DTexture?Ft=Math.floor(Le.depth*de):Ft=1,Wt=0,ie=0,me=0}J!==null?(Ht=J.x,ge=J.y,Ze=J.z):(Ht=0,ge=0,Ze=0);let De=Mt.convert(G.format),gn=Mt.convert(G.type),zt;G.isData3DTexture?(Zt.setTexture3D(G,0),zt=k.TEXTURE_3D):G.isDataArrayTexture||G.isCompressedArrayTexture?(Zt.setTexture2DArray(G,0),zt=k.TEXTURE_2D_ARRAY):(Zt.setTexture2D(G,0),zt=k.TEXTURE_2D),At.activeTexture(k.TEXTURE0),At.pixelStorei(k.UNPACK_FLIP_Y_WEBGL,G.flipY),At.pixelStorei(k.UNPACK_PREMULTIPLY_ALPHA_WEBGL,G.premultiplyAlpha),At.pixelStorei(k.UNPACK_ALIGNMENT,G.unpackAlignment);let ln=At.getParameter(k.UNPACK_ROW_LENGTH),ye=At.getParameter(k.UNPACK_IMAGE_HEIGHT),es=At.getParameter(k.UNPACK_SKIP_PIXELS),cn=At.getParameter(k.UNPACK_SKIP_ROWS),Sr=At.getParameter(k.UNPACK_SKIP_IMAGES);At.pixelStorei(k.UNPACK_ROW_LENGTH,Le.width),At.pixelStorei(k.UNPACK_IMAGE_HEIGHT,Le.height),At.pixelStorei(k.UNPACK_SKIP_PIXELS,Wt),At.pixelStorei(k.UNPACK_SKIP_ROWS,ie),At.pixelStorei(k.UNPACK_SKIP_IMAGES,me);let Vi=A.isDataArrayTexture||A.isData3DTexture,ns=G.isDataArrayTexture||G.isData3DTexture;if(A.isDepthTexture){let de=Xt.get(A),Ke=Xt.get(G),Hn=Xt.get(de.__renderTarget),Ne=Xt.get(Ke.__renderTarget);At.bindFramebuffer(k.READ_FRAMEBUFFER,Hn.__webglFramebuffer),At.bindFramebuffer(k.DRAW_FRAMEBUFFER,Ne.__webglFramebuffer);for(let hn=0;hn<Ft;hn++)Vi&&(k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,Xt.get(A).__webglTexture,K,me+hn),k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,Xt.get(G).__webglTexture,Ct,Ze+hn)),k.blitFramebuffer(Wt,ie,Wt+Dt,ie+Pt,Ht,ge,Ht+Dt,ge+Pt,k.DEPTH_BUFFER_BIT,k.NEAREST);At.bindFramebuffer(k.READ_FRAMEBUFFER,null),At.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else if(K!==0||A.isRenderTargetTexture||Xt.has(A)){let de=Xt.get(A),Ke=Xt.get(G);At.bindFramebuffer(k.READ_FRAMEBUFFER,P),At.bindFramebuffer(k.DRAW_FRAMEBUFFER,F);for(let Hn=0;Hn<Ft;Hn++)Vi?k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,de.__webglTexture,K,me+Hn):k.framebufferTexture2D(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,de.__webglTexture,K),ns?k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,Ke.__webglTexture,Ct,Ze+Hn):k.framebufferTexture2D(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,Ke.__webglTexture,Ct),K!==0?k.blitFramebuffer(Wt,ie,Wt+Dt,ie+Pt,Ht,ge,Ht+Dt,ge+Pt,k.COLOR_BUFFER_BIT,k.NEAREST):ns?k.copyTexSubImage3D(zt,Ct,Ht,ge,Ze+Hn,Wt,ie,Dt,Pt):k.copyTexSubImage2D(zt,Ct,Ht,ge,Wt,ie,Dt,Pt);At.bindFramebuffer(k.READ_FRAMEBUFFER,null),At.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else ns?A.isDataTexture||A.isData3DTexture?k.texSubImage3D(zt,Ct,Ht,ge,Ze,Dt,Pt,Ft,De,gn,Le.data):G.isCompressedArrayTexture?k.compressedTexSubImage3D(zt,Ct,Ht,ge,Ze,Dt,Pt,Ft,De,Le.data):k.texSubImage3D(zt,Ct,Ht,ge,Ze,Dt,Pt,Ft,De,gn,Le):A.isDataTexture?k.texSubImage2D(k.TEXTURE_2D,Ct,Ht,ge,Dt,Pt,De,gn,Le.data):A.isCompressedTexture?k.compressedTexSubImage2D(k.TEXTURE_2D,Ct,Ht,ge,Le.width,Le.height,De,Le.data):k.texSubImage2D(k.TEXTURE_2D,Ct,Ht,ge,Dt,Pt,De,gn,Le);At.pixelStorei(k.UNPACK_ROW_LENGTH,ln),At.pixelStorei(k.UNPACK_IMAGE_HEIGHT,ye),At.pixelStorei(k.UNPACK_SKIP_PIXELS,es),At.pixelStorei(k.UNPACK_SKIP_ROWS,cn),At.pixelStorei(k.UNPACK_SKIP_IMAGES,Sr),Ct===0&&G.generateMipmaps===!0&&G.mipmapsAutoUpdate===!0&&k.generateMipmap(zt),At.unbindTexture()},this.initRenderTarget=function(A){Xt.get(A).__webglFramebuffer===void 0&&Zt.setupRenderTarget(A)},this.initTexture=function(A){A.isCubeTexture?Zt.setTextureCube(A,0):A.isData3DTexture?Zt.setTexture3D(A,0):A.isDataArrayTexture||A.isCompressedArrayTexture?Zt.setTexture2DArray(A,0):Zt.setTexture2D(A,0),At.unbindTexture()},this.resetState=function(){H=0,O=0,st=null,At.reset(),Tt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return bi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=be._getDrawingBufferColorSpace(t),e.unpackColorSpace=be._getUnpackColorSpace()}};var n0={type:"change"},Fd={type:"start"},s0={type:"end"},ch=new dr,i0=new Yn,Dw=Math.cos(70*vd.DEG2RAD),bn=new X,ei=2*Math.PI,Ae={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},Ud=1e-6,hh=class extends ya{constructor(t,e=null){super(t,e),this.state=Ae.NONE,this.target=new X,this.cursor=new X,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Xs.ROTATE,MIDDLE:Xs.DOLLY,RIGHT:Xs.PAN},this.touches={ONE:$s.ROTATE,TWO:$s.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new X,this._lastQuaternion=new di,this._lastTargetPosition=new X,this._quat=new di().setFromUnitVectors(t.up,new X(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new po,this._sphericalDelta=new po,this._scale=1,this._panOffset=new X,this._rotateStart=new re,this._rotateEnd=new re,this._rotateDelta=new re,this._panStart=new re,this._panEnd=new re,this._panDelta=new re,this._dollyStart=new re,this._dollyEnd=new re,this._dollyDelta=new re,this._dollyDirection=new X,this._mouse=new re,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=Uw.bind(this),this._onPointerDown=Nw.bind(this),this._onPointerUp=Fw.bind(this),this._onContextMenu=Hw.bind(this),this._onMouseWheel=kw.bind(this),this._onKeyDown=zw.bind(this),this._onTouchStart=Vw.bind(this),this._onTouchMove=Gw.bind(this),this._onMouseDown=Ow.bind(this),this._onMouseMove=Bw.bind(this),this._interceptControlDown=Ww.bind(this),this._interceptControlUp=Xw.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Ae.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(n0),this.update(),this.state=Ae.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;bn.copy(e).sub(this.target),bn.applyQuaternion(this._quat),this._spherical.setFromVector3(bn),this.autoRotate&&this.state===Ae.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=ei:n>Math.PI&&(n-=ei),s<-Math.PI?s+=ei:s>Math.PI&&(s-=ei),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(bn.setFromSpherical(this._spherical),bn.applyQuaternion(this._quatInverse),e.copy(this.target).add(bn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=bn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new X(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new X(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=bn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(ch.origin.copy(this.object.position),ch.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(ch.direction))<Dw?this.object.lookAt(this.target):(i0.setFromNormalAndCoplanarPoint(this.object.up,this.target),ch.intersectPlane(i0,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>Ud||8*(1-this._lastQuaternion.dot(this.object.quaternion))>Ud||this._lastTargetPosition.distanceToSquared(this.target)>Ud?(this.dispatchEvent(n0),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?ei/60*this.autoRotateSpeed*t:ei/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){bn.setFromMatrixColumn(e,0),bn.multiplyScalar(-t),this._panOffset.add(bn)}_panUp(t,e){this.screenSpacePanning===!0?bn.setFromMatrixColumn(e,1):(bn.setFromMatrixColumn(e,0),bn.crossVectors(this.object.up,bn)),bn.multiplyScalar(t),this._panOffset.add(bn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;bn.copy(s).sub(this.target);let r=bn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/e.clientHeight),this._rotateUp(ei*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/e.clientHeight),this._rotateUp(ei*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new re,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function Nw(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function Uw(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function Fw(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(s0),this.state=Ae.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function Ow(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Xs.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Ae.DOLLY;break;case Xs.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ae.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ae.ROTATE}break;case Xs.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ae.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ae.PAN}break;default:this.state=Ae.NONE}this.state!==Ae.NONE&&this.dispatchEvent(Fd)}function Bw(i){switch(this.state){case Ae.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Ae.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Ae.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function kw(i){this.enabled===!1||this.enableZoom===!1||this.state!==Ae.NONE||(i.preventDefault(),this.dispatchEvent(Fd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(s0))}function zw(i){this.enabled!==!1&&this._handleKeyDown(i)}function Vw(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case $s.ROTATE:if(this.enableRotate===!1){this.state=Ae.NONE;break}this._handleTouchStartRotate(i),this.state=Ae.TOUCH_ROTATE;break;case $s.PAN:if(this.enablePan===!1){this.state=Ae.NONE;break}this._handleTouchStartPan(i),this.state=Ae.TOUCH_PAN;break;default:this.state=Ae.NONE}break;case 2:switch(this.touches.TWO){case $s.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Ae.TOUCH_DOLLY_PAN;break;case $s.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Ae.TOUCH_DOLLY_ROTATE;break;default:this.state=Ae.NONE}break;default:this.state=Ae.NONE}this.state!==Ae.NONE&&this.dispatchEvent(Fd)}function Gw(i){switch(this._trackPointer(i),this.state){case Ae.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Ae.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Ae.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Ae.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Ae.NONE}}function Hw(i){this.enabled!==!1&&i.preventDefault()}function Ww(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function Xw(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var Od=Math.PI/36,$w=.06,r0=1.15,o0=.02;function a0(i,t,e){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let{target:n}=e,s=t.position.clone().sub(n),r={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[i.key];if(r){let[o,a]=r,l=new X().setFromMatrixColumn(t.matrix,0);if(i.shiftKey){let c=new X().setFromMatrixColumn(t.matrix,1),u=l.multiplyScalar(o).addScaledVector(c,a).multiplyScalar($w*s.length());n.add(u)}else{s.applyAxisAngle(t.up,o*Od);let c=Math.min(Math.PI-o0,Math.max(o0,s.angleTo(t.up)-a*Od));s.applyAxisAngle(l.applyAxisAngle(t.up,o*Od),c-s.angleTo(t.up))}}else if(i.key==="+"||i.key==="="||i.key==="-"){let o=s.length()*(i.key==="-"?r0:1/r0);s.setLength(Math.min(e.maxDistance,Math.max(e.minDistance,o)))}else return!1;return t.position.copy(n).add(s),e.update(),!0}function Bd(i,t){let e=t;e._quat?.setFromUnitVectors(i.up,new X(0,1,0)),e._quat&&e._quatInverse?.copy(e._quat).invert()}var Zw=["quiet","within","near","broken","waived","near","within"],uh=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;this.renderer=new oh({antialias:!0,alpha:!0}),this.soft=jw(this.renderer),this.renderer.setPixelRatio(this.soft?1:Math.min(2,devicePixelRatio)),this.renderer.localClippingEnabled=!0,t.append(this.renderer.domElement,this.labelLayer),this.renderer.domElement.setAttribute("aria-hidden","true"),this.controls=new hh(this.camera,this.renderer.domElement),this.controls.enableDamping=!1,this.controls.addEventListener("change",()=>this.ask()),this.controls.addEventListener("start",()=>{this.flight++}),t.addEventListener("keydown",r=>{if(r.target===t){if(r.key==="Home")this.alongLight();else if(a0(r,this.camera,this.controls))this.flight++;else return;r.preventDefault(),this.ask()}});let s=new _a(16777215,1.9);s.position.set(-.4,.7,1),this.camera.add(s),this.stage.add(this.camera,new xa(16777215,1.35),this.seam,this.marker);for(let r of e.meshes)this.addPart(r);this.measure(),this.buildSeam(),this.alongLight(!1),new ResizeObserver(()=>this.fit()).observe(t),this.fit(),this.show(n.place)}host;atlas;walk;renderer;stage=new ia;camera=new Zn(32,1,.1,1e4);controls;parts=new Map;seam=new Li;marker=new Li;labels=[];labelLayer=qt("div",{class:"scene-labels"});cutPlane=new Yn(new X(1,0,0),0);centre=new X;radius=50;cut=!1;shownJoint=-1;flight=0;waiting=!1;soft;addPart(t){let e=this.roleOf(t.part),n=new Li,s=Kw(t),r=e==="cover",o=new le(rn(r?"cover-solid":e==="base"?"base-solid":"other-solid")),a=new da({color:o,side:r?jn:Ni,transparent:r,opacity:r?.3:1,depthWrite:!r,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1}),l=Jw(new le(rn(r?"cover-cut":"base-cut")),new le(rn("ink")),r?-1:1),c=new Pn(s,l);c.visible=!1,c.name="inside";let u=new Pn(s,a);u.renderOrder=r?2:0;let h=new ho(Qw(t),new Vs({color:new le(rn("ink")),transparent:!0,opacity:r?.5:.4}));h.renderOrder=r?3:1,n.add(u,c,h),n.userData={role:e},this.parts.set(t.part,n),this.stage.add(n)}roleOf(t){let e=this.walk.joint;return e.cover.includes(t)?"cover":e.base.includes(t)?"base":"other"}measure(){let t=new X(1/0,1/0,1/0),e=new X(-1/0,-1/0,-1/0);for(let n of this.atlas.meshes)for(let s=0;s<n.positions.length;s+=3){let r=new X(n.positions[s],n.positions[s+1],n.positions[s+2]);t.min(r),e.max(r)}for(let n of this.walk.joint.contours)for(let s of Kn(n))t.min(new X(...s)),e.max(new X(...s));this.centre.addVectors(t,e).multiplyScalar(.5),this.radius=Math.max(1,t.distanceTo(e)/2),this.camera.near=this.radius/500,this.camera.far=this.radius*40,this.controls.minDistance=this.radius/60,this.controls.maxDistance=this.radius*12}buildSeam(){this.shownJoint=this.walk.place.joint,this.seam.clear(),this.labels.length=0,en(this.labelLayer);let{joint:t,facts:e}=this.walk,n=new X(...or(t.beam).toward);for(let r of t.contours){let o=Kn(r),a=(r.summary.rib_width?.median??1.5)*.36,l=new Uint8Array(o.length);for(let[c,u,h]of e.worst[r.id]??[])l.fill(h,c,u+1);this.seam.add(t1(o.map(c=>new X(...c)),r.stations.u.map(c=>new X(...c)),n,a,l,r.closed))}let s=[];for(let r of this.atlas.payload.findings){if(r.joint!==t.id||r.station===null||r.severity==="note")continue;let o=t.contours.find(_=>_.id===r.contour);if(!o)continue;let a=new X(...Kn(o)[r.station]),l=new X(...o.stations.u[r.station]),c=s.find(_=>_.at.distanceTo(a)<this.radius/60);if(c){c.findings.push(r),c.numbers.textContent=Cs(c.findings),c.numbers.setAttribute("aria-label",`${c.numbers.textContent}: ${gt("go to these findings")}`);continue}let u=new le(rn(r.waived?"waived":r.severity==="must-fix"?"broken":"near")),h=new zn().setFromPoints([a.clone().addScaledVector(l,-this.radius/22),a.clone().addScaledVector(l,this.radius/22)]),d=new ho(h,new Vs({color:u,depthTest:!1}));d.renderOrder=6,this.seam.add(d);let f=qt("button",{type:"button",class:`scene-label ${r.waived?"waived":r.severity}`,"data-finding":r.n,"aria-label":`${r.n}: ${gt("go to {title}",{title:r.title})}`},String(r.n));f.addEventListener("click",()=>this.walk.showFinding(r)),this.labelLayer.append(f);let g=a.clone().addScaledVector(l,this.radius/16);this.labels.push({element:f,at:g}),s.push({at:a,numbers:f,findings:[r]})}}show(t,e=!1){t.joint!==this.shownJoint&&this.buildSeam();let{contour:n,joint:s}=this.walk,r=new X(...Kn(n)[t.station]),o=new X(...n.stations.u[t.station]),a=new X(...or(s.beam).toward),l=new X().crossVectors(a,o).normalize();if(this.buildMarker(r,o,a,l),this.cutPlane.setFromNormalAndCoplanarPoint(l.clone().negate(),r),e){let c=r.clone().addScaledVector(o,this.radius*.22).addScaledVector(a,this.radius*.2).addScaledVector(l,this.radius*.34);this.fly(c,r,a)}this.ask()}buildMarker(t,e,n,s){for(let h of[...this.marker.children])l0(h);this.marker.clear();let r=Math.max(4,(this.walk.contour.summary.rib_width?.median??1.5)*3.2),o=(h,d)=>t.clone().addScaledVector(e,h*r).addScaledVector(n,d*r),a=new le(rn("walker")),l=new aa(new zn().setFromPoints([o(-1,-1),o(1,-1),o(1,1),o(-1,1)]),new Vs({color:a,depthTest:!1}));l.renderOrder=8;let c=new Pn(new fr(2*r,2*r),new _s({color:a,transparent:!0,opacity:this.cut?0:.12,side:jn,depthWrite:!1}));c.position.copy(t),c.up.copy(n),c.lookAt(t.clone().add(s)),c.renderOrder=7;let u=new Pn(new ua(r*.08,16,12),new _s({color:a,depthTest:!1}));u.position.copy(t),u.renderOrder=9,this.marker.add(l,c,u),this.host.dataset.marker=[t.x,t.y,t.z].map(h=>h.toFixed(3)).join(" ")}fly(t,e,n){let s=++this.flight,r=this.camera.position.clone(),o=this.controls.target.clone(),a=this.camera.up.clone(),l=gf()||this.soft?0:550,c=performance.now(),u=h=>{if(s!==this.flight)return;let d=l?Math.min(1,(h-c)/l):1,f=d*d*(3-2*d);this.camera.position.lerpVectors(r,t,f),this.controls.target.lerpVectors(o,e,f),this.camera.up.lerpVectors(a,n,f).normalize(),Bd(this.camera,this.controls),this.controls.update(),this.ask(),d<1&&requestAnimationFrame(u)};u(c)}distance(){let t=Math.tan(this.camera.fov*Math.PI/360);return this.radius*1.02/Math.min(t,t*Math.max(.3,this.camera.aspect))}alongLight(t=!0){let e=or(this.walk.joint.beam),n=this.centre.clone().addScaledVector(new X(...e.toward),this.distance());this.go(n,new X(...e.up),t)}aslant(t=!0){let e=or(this.walk.joint.beam),n=new X(...e.toward).multiplyScalar(.75).addScaledVector(new X(...e.right),.45).addScaledVector(new X(...e.up),-.75).normalize();this.go(this.centre.clone().addScaledVector(n,this.distance()),new X(...e.toward),t)}go(t,e,n){if(n){this.fly(t,this.centre.clone(),e);return}this.camera.up.copy(e),this.camera.position.copy(t),this.controls.target.copy(this.centre),Bd(this.camera,this.controls),this.controls.update(),this.ask()}flyToMarker(){this.show(this.walk.place,!0)}setCut(t){this.cut=t;let e=t?[this.cutPlane]:[];for(let n of this.parts.values())n.traverse(s=>{let r=s.material;if(r){if(r.clippingPlanes=e,s.name==="inside")s.visible=t;else if(s instanceof Pn&&n.userData.role==="cover"){let o=r;o.opacity=t?1:.3,o.transparent=!t,o.depthWrite=t,o.side=t?Ni:jn}r.needsUpdate=!0}});this.seam.traverse(n=>{let s=n.material;s&&n instanceof Pn&&(s.clippingPlanes=e)}),this.show(this.walk.place)}setVisible(t,e){let n=this.parts.get(t);n&&(n.visible=e),this.ask()}get partIds(){return[...this.parts.keys()]}retheme(){for(let[t,e]of this.parts)this.stage.remove(e),e.traverse(l0),this.parts.delete(t);for(let t of this.atlas.meshes)this.addPart(t);this.buildSeam(),this.setCut(this.cut)}fit(){let t=this.host.getBoundingClientRect();t.width<10||t.height<10||(this.renderer.setSize(t.width,t.height),this.camera.aspect=t.width/t.height,this.camera.updateProjectionMatrix(),this.ask())}ask(){this.waiting||(this.waiting=!0,requestAnimationFrame(()=>{this.waiting=!1,this.renderer.render(this.stage,this.camera);let t=this.host.getBoundingClientRect();for(let{element:e,at:n}of this.labels){let s=n.clone().project(this.camera),r=s.z<1&&Math.abs(s.x)<1&&Math.abs(s.y)<1;e.hidden=!r,r&&(e.style.transform=`translate(${(s.x+1)/2*t.width}px, ${(1-s.y)/2*t.height}px) translate(-50%, -50%)`)}this.host.dataset.eye=this.camera.position.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.target=this.controls.target.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.drawn=String(Number(this.host.dataset.drawn??0)+1)}))}};function Jw(i,t,e){let n=new _s({color:i,side:Dn});return n.onBeforeCompile=s=>{s.uniforms.strokes={value:t},s.fragmentShader=`uniform vec3 strokes;
${s.fragmentShader}`.replace("#include <opaque_fragment>",`#include <opaque_fragment>
if (mod(gl_FragCoord.x + ${e.toFixed(1)} * gl_FragCoord.y, 9.0) < 1.4) gl_FragColor.rgb = mix(gl_FragColor.rgb, strokes, 0.62);`)},n.customProgramCacheKey=()=>`hatched${e}`,n}function jw(i){let t=i.getContext(),e=t.getExtension("WEBGL_debug_renderer_info"),n=e?String(t.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";return/swiftshader|llvmpipe|software/i.test(n)}function l0(i){let t=i;t.geometry?.dispose(),t.material&&t.material.dispose()}function c0(i){let t=i.length/3,e=1024;for(;e<t*2;)e*=2;let n=new Int32Array(e).fill(-1),s=new Uint32Array(t),r=o=>Math.round(i[o]*1e4);for(let o=0;o<t;o++){let[a,l,c]=[r(3*o),r(3*o+1),r(3*o+2)],u=(Math.imul(a,73856093)^Math.imul(l,19349663)^Math.imul(c,83492791))&e-1;for(;;u=u+1&e-1){let h=n[u];if(h<0){n[u]=o,s[o]=o;break}if(r(3*h)===a&&r(3*h+1)===l&&r(3*h+2)===c){s[o]=h;break}}}return s}function Kw(i){let{positions:t,triangles:e,face:n}=i,s=c0(t),r=t.length/3,o=new Map,a=new Uint32Array(e.length),l=[];for(let u=0;u<e.length;u++){let h=s[e[u]],d=(n[Math.floor(u/3)]+1)*r+h,f=o.get(d);f===void 0&&(f=l.length/3,o.set(d,f),l.push(t[3*h],t[3*h+1],t[3*h+2])),a[u]=f}let c=new zn;return c.setAttribute("position",new Bn(new Float32Array(l),3)),c.setIndex(new Bn(a,1)),c.computeVertexNormals(),c}function Qw(i){let{positions:t,triangles:e,face:n}=i,s=c0(t),r=t.length/3,o=new Map;for(let c=0;c<e.length;c++){let[u,h]=[s[e[c]],s[e[c%3===2?c-2:c+1]]],d=u<h?u*r+h:h*r+u,f=n[Math.floor(c/3)],g=o.get(d);g===void 0?o.set(d,f):g===f&&o.set(d,-2)}let a=[];for(let[c,u]of o){if(u===-2)continue;let h=Math.floor(c/r),d=c%r;a.push(t[3*h],t[3*h+1],t[3*h+2],t[3*d],t[3*d+1],t[3*d+2])}let l=new zn;return l.setAttribute("position",new Bn(new Float32Array(a),3)),l}function t1(i,t,e,n,s,r){let a=[],l=[],c=[],u=Zw.map(g=>new le(rn(g)));i.forEach((g,_)=>{let p=s[_]===3||s[_]===4?1.5:s[_]===5?1.3:s[_]===2?1.1:.85,m=u[s[_]];for(let y=0;y<8;y++){let E=y/8*2*Math.PI,b=g.clone().addScaledVector(t[_],Math.cos(E)*n*p).addScaledVector(e,Math.sin(E)*n*p);a.push(b.x,b.y,b.z),l.push(m.r,m.g,m.b)}});let h=r?i.length:i.length-1;for(let g=0;g<h;g++){let _=(g+1)%i.length;for(let p=0;p<8;p++){let m=(p+1)%8;c.push(g*8+p,_*8+p,_*8+m,g*8+p,_*8+m,g*8+m)}}let d=new zn;d.setAttribute("position",new Bn(new Float32Array(a),3)),d.setAttribute("color",new Bn(new Float32Array(l),3)),d.setIndex(c);let f=new Pn(d,new _s({vertexColors:!0,side:jn}));return f.renderOrder=4,f}function d0(i,t,e,n){let s=(m,y)=>t.summary[m]?.max??y,r=s("rib_width",1.5),o=Math.min(s("rib_height",1.2),4),a=s("cover_thickness_max",2),l=Math.max(r/2+2.2,r*1.9),c=zd(t),u=Math.max(l,Math.min(r/2+e+s("clamp_land",2)+.7,r/2+6)),h=c&&n?.edgeOfCover(c)||0,d=h>0&&h+.4<=u+3?Math.max(u,h+.4):u,f=a+Math.max(0,Math.min(s("gap",0),1))+.35,g=Math.max(...(n?.slopes??[0]).map(Math.abs));f+=Math.min(g,1)*l*.5;for(let m of n?.shade??[])m.v!==null&&m.v<a+5&&(f=Math.max(f,m.v+1.2));let _=Math.min(g,1)*l*.5,p={left:c>0?-l:-d,right:c<0?l:d};return i.rib_on==="cover"?{...p,bottom:-Math.max(1.6,o)-_,top:Math.max(f,o+1.2)}:{...p,bottom:-(o+1.4)-_,top:f}}var zd=i=>i.clamp_side==="outer"?1:i.clamp_side==="inner"?-1:0;function Vd(i,t,e,n,s=7){let r=[...i].sort((a,l)=>a.wanted-l.wanted),o=u0(r,t,e,s);for(let a=0,l=h0(r,o,n);l>0&&a<r.length;a++){let c=!1;for(let u=0;u<r.length;u++)for(let h=u+1;h<r.length;h++){let d=[...r];[d[u],d[h]]=[d[h],d[u]];let f=u0(d,t,e,s),g=h0(d,f,n);g>=l||(r.splice(0,r.length,...d),[o,l,c]=[f,g,!0])}if(!c)break}r.forEach((a,l)=>a.put(o[l]))}function h0(i,t,e){let n=i.flatMap((r,o)=>r.end?[[[e,t[o]+8],r.end]]:[]),s=0;return n.forEach((r,o)=>n.slice(o+1).forEach(a=>{e1(r,a)&&s++})),s}function e1([i,t],[e,n]){let s=(r,o,a)=>Math.sign((o[0]-r[0])*(a[1]-r[1])-(o[1]-r[1])*(a[0]-r[0]));return s(i,t,e)*s(i,t,n)<0&&s(e,n,i)*s(e,n,t)<0}function u0(i,t,e,n){let s=[],r=t;for(let a of i){let l=Math.max(r,a.wanted-a.height/2);s.push(l),r=l+a.height+n}let o=e;for(let a=i.length-1;a>=0;a--)s[a]=Math.min(s[a],o-i[a].height),o=s[a]-n;return s}var dh=null;function yr(i,t=12,e=500){return dh??=document.createElement("canvas").getContext("2d"),dh?(dh.font=`${e} ${t}px "Barlow Semi Condensed", "Arial Narrow", sans-serif`,dh.measureText(i).width):i.length*t*.47}function Ys(i,t,e=6,n=12,s=500){let r=l=>yr(l,n,s)<=t,o=[];for(let l of i.split(/ +/)){let c=o[o.length-1];c!==void 0&&r(`${c} ${l}`)?o[o.length-1]=`${c} ${l}`:o.push(l)}let a=(l,c)=>{if(!c&&r(l))return l;let u=l;for(;u.length>1&&!r(`${u}…`);)u=u.slice(0,-1);return`${u}…`};return o.slice(0,e).map((l,c)=>a(l,c===e-1&&o.length>e))}var pn=i=>i.waived?"waived":i.severity;function f0(i,t){let e=i.limit?` (${i.limit})`:"";return`${Lr[i.severity]} ${i.n}  ${i.title}${t&&t!=="–"?`: ${t}`:""}${e}`}function p0(i,t,e,n,s){let r=t+30+n*22<s.right?1:-1,o=t+r*(20+n*22),a=Math.max(s.top+10,Math.min(s.bottom-10,e-18));return ut("g",{class:`pin ${pn(i)}`,"data-finding":i.n},ut("path",{d:`M${q(t)} ${q(e)}L${q(o)} ${q(a)}`}),ut("circle",{class:"pin-dot",cx:q(t),cy:q(e),r:2.6}),ut("circle",{class:"pin-head",cx:q(o),cy:q(a),r:9}),ut("text",{x:q(o),y:q(a+4),"text-anchor":"middle"},String(i.n)))}function fh(i,t,e,n){if(!i.at)return null;let{x:s,y:r,z:o,u:a}=e.stations,l=[i.at[0]-s[n],i.at[1]-r[n],i.at[2]-o[n]],c=(g,_)=>g[0]*_[0]+g[1]*_[1]+g[2]*_[2],u=a[n],h=t.beam,d=c(l,u),f=-c(l,h);return[d,f,Math.sqrt(Math.max(c(l,l)-d*d-f*f,0))]}function m0(i,t,e,n){let s=fh(i,t,e,n);return s&&s[2]<=.6?[s[0],s[1]]:null}function g0([i,t,e]){return[[i,i>0?gt("outward"):gt("inward")],[t,t>0?gt("above"):gt("below")],[e,gt("along the seam")]].filter(([s])=>Math.abs(s)>=.5).map(([s,r])=>`${Un(Math.abs(s),1)} ${r}`).join(", ")}var _0=14;function Gd(i,t,e,n){let s=i.column===null?void 0:t.stations[i.column];return s&&i.station!==e?n.value(s[e]??null,i.column):i.value}var ph=class{constructor(t,e,n,s,r,o,a,l,c){this.root=t;this.words=e;this.bands=n;this.here=s;this.key=r;this.contour=o;this.station=a;this.plot=l;this.width=c}root;words;bands;here;key;contour;station;plot;width;margins={left:[],right:[]};shown=new Set;value(t){return this.contour.stations[t]?.[this.station]??null}finding(t){let e=[t.column,...t.judged??[]];return this.here.find(n=>e.includes(n.column??"")||e.includes(n.quantity))??null}text(t){return Gd(t,this.contour,this.station,this.words)}lines(t,e,n){let s=e!==null&&e.column!==null&&e.column!==t.column,r=e&&e.value!=="–"&&(s||e.column===t.column)?this.text(e):this.words.value(this.value(t.column),t.column),o=e?.limit||this.bands.find(h=>h.columns.includes(t.column)&&h.words)?.words||"",a=e?.target&&r!==gt("not measured")?` → ${e.target}`:"",l=Ys(t.title,n).map(h=>["dim-title",h]),c=e?`${Lr[e.severity]}${e.n} ${r}`:r,u=a&&yr(c+a,14,600)>n?[c,a.trim()]:[c+a];l.push(...u.flatMap(h=>Ys(h,n,3,14,600)).map(h=>["dim-value",h])),s&&this.words.unit(e.column)!==this.words.unit(t.column)&&l.push(["dim-limit",this.words.value(this.value(t.column),t.column)]);for(let h of o?Ys(o,n):[])l.push(["dim-limit",h]);for(let h of t.also??[])l.push(...Ys(h,n).map(d=>["dim-limit",d]));return l}group(t,e){return e&&this.shown.add(e),ut("g",{class:`dim-label ${e?pn(e):""}`,"data-column":t.column,"data-finding":e?.n})}arrows(t,e,n,s,r=""){let o=Math.hypot(n-t,s-e),a=`url(#${this.key}-arrow)`,l=`dim ${r}`;if(o>=22){this.root.append(ut("path",{class:l,d:`M${q(t)} ${q(e)}L${q(n)} ${q(s)}`,"marker-start":a,"marker-end":a}));return}let[c,u]=o>.01?[(n-t)/o,(s-e)/o]:[0,1];this.root.append(ut("path",{class:l,d:`M${q(t-c*16)} ${q(e-u*16)}L${q(t)} ${q(e)}`,"marker-end":a}),ut("path",{class:l,d:`M${q(n+c*16)} ${q(s+u*16)}L${q(n)} ${q(s)}`,"marker-end":a}))}change(t,[e,n],[s,r]){Math.hypot(s-e,r-n)<3||this.root.append(ut("path",{class:`change ${pn(t)}`,d:`M${q(e)} ${q(n)}L${q(s)} ${q(r)}`,"marker-end":`url(#${this.key}-to)`,"data-finding":t.n}))}sketch(t,[e,n]){this.root.append(ut("path",{class:t,d:`M${q(e[0])} ${q(e[1])}L${q(n[0])} ${q(n[1])}`}))}word(t,[e,n],s,r){this.root.append(ut("g",{class:`dim-label ${pn(t)}`},ut("text",{class:"dim-value",x:q(e),y:q(n),"text-anchor":s},r)))}margin(t,e,n,s,r){for(let[o,a]of[t,e])this.root.append(ut("path",{class:"extension",d:`M${q(o)} ${q(a)}V${q(n-4)}`}));this.arrows(Math.min(t[0],e[0]),n,Math.max(t[0],e[0]),n),this.root.append(ut("g",{class:"dim-label"},ut("text",{class:"dim-limit",x:q(t[0]-s*20),y:q(n+4),"text-anchor":s>0?"end":"start"},r)))}across(t,e,n,s,r,o=0){let[a,l]=[Math.min(t,e),Math.max(t,e)],c=this.finding(r),u=c?pn(c):"";[a,l].forEach((S,z)=>this.root.append(ut("path",{class:"extension",d:`M${q(S)} ${q(s[z])}V${q(n-4)}`}))),this.arrows(a,n,l,n,u);let h=this.group(r,c),d=o===0?(a+l)/2:o>0?a+4:l-4,f=o===0?"middle":o>0?"start":"end",g=this.lines(r,c,260),_=g.filter(([S])=>S==="dim-title"),p=g.filter(([S])=>S==="dim-value"),m=g.filter(([S])=>S==="dim-limit"),y=_.map(([,S])=>S).join(" "),E=p.map(([,S])=>S).join(" "),b=o===0?2*Math.min(d,this.width-d):o>0?this.width-d:d,C=yr(`${y}  `,12,500)+yr(E,14,600)<=b-6,w=ut("text",{class:"dim-value",x:q(d),y:q(n-6),"text-anchor":f});C&&w.append(ut("tspan",{class:"dim-title"},`${y}  `)),w.append(ut("tspan",{class:"dim-value"},E)),h.append(w),(C?m:[..._.length?Ys(y,b-6).map(S=>["dim-title",S]):[],...m]).reverse().forEach(([S,z],I)=>h.append(ut("text",{class:S,x:q(d),y:q(n-19-I*13),"text-anchor":f},z))),this.root.append(h)}along(t,e,n,s){let r=this.edge(t),o=this.finding(s);for(let[a,l]of[e,n])this.root.append(ut("path",{class:"extension",d:`M${q(a)} ${q(l)}H${q(r+t*4)}`}));this.arrows(r,e[1],r,n[1],o?pn(o):""),this.slot(t,(e[1]+n[1])/2,s)}leader(t,e,n){let s=this.edge(t),r=s+t*4;this.slot(t,e[1],n,o=>this.root.append(ut("path",{class:"leader",d:`M${q(r+t*4)} ${q(o)}H${q(r-t*6)}L${q(e[0])} ${q(e[1])}`}),ut("circle",{class:"leader-dot",cx:q(e[0]),cy:q(e[1]),r:2})),e)}edge(t){return t<0?this.plot.x-12:this.plot.x+this.plot.w+12}slot(t,e,n,s=()=>{},r){let o=this.edge(t)+t*10,a=t<0?"end":"start",l=this.finding(n),c=(t<0?o:this.width-o)-5,u=this.lines(n,l,c),h=this.group(n,l);this.root.append(h),this.margins[t<0?"left":"right"].push({wanted:e,height:u.length*_0,end:r,put:d=>{u.forEach(([f,g],_)=>h.append(ut("text",{class:f,x:q(o),y:q(d+11+_*_0),"text-anchor":a},g))),s(d+8)}})}settle(t,e){Vd(this.margins.left,t,e,this.edge(-1)+2),Vd(this.margins.right,t,e,this.edge(1)-2)}};function x0(i,t,e,n,s,r,o,a){let l=(i("cover_thickness")??0)+(e>0?Math.max(i("gap")??0,0):0),c=i("light_lean"),u=i("light_enters_inner"),h=i("light_enters_outer"),d=u!==null&&h!==null,f=(i("light_width")??2*t)/2+n.margin,[g,_]=d?[u-n.margin,h+n.margin]:[-f,f],p=Math.max((s.at(0,l)[1]-s.ceiling)/s.scale,0),m=P=>Math.tan(P*Math.PI/180)*p,[y,E]=d?[g+m((c??0)-n.cone),_+m((c??0)+n.cone)]:[g,_],b=P=>{let F=(P+f)/(2*f),H=(O,st)=>O+F*(st-O);return{above:H(y,E),enters:H(g,_),foot:P}},C=(P,F)=>{let[H,O]=s.at(P,F??l+p);return`${q(H)} ${q(F===null?s.ceiling:O)}`},w=(P,F)=>F>=l?P.enters+(P.above-P.enters)*(F-l)/Math.max(p,1e-9):P.foot+(P.enters-P.foot)*F/Math.max(l,1e-9),x=(P,F,H)=>{let O=H===null?[C(P.above,null),C(P.enters,l)]:H>l?[C(w(P,H),H),C(P.enters,l)]:[C(w(P,H),H)],st=H===null?[C(F.enters,l),C(F.above,null)]:H>l?[C(F.enters,l),C(w(F,H),H)]:[C(w(F,H),H)];return`M${[...O,C(P.foot,0),C(F.foot,0),...st].join("L")}Z`},S=[ut("path",{class:"light",d:x(b(-f),b(f),null)})],z=r.filter(P=>P.leans===(c!==null)||r.every(F=>F.leans===P.leans)),I=P=>Math.abs(P)>=f-n.margin-.001?Math.sign(P)*f:P;for(let P of z){let F=P.v!==null&&P.v<l+p?P.v:null;S.push(ut("path",{class:P.share>0?"shade part":"shade",d:x(b(I(P.low)),b(I(P.high)),F),"data-low":P.low,"data-high":P.high,"data-share":P.share}))}let R=Math.max(z.length?4:1,Math.min(z.length?6:4,Math.round(2*f*s.scale/26)));for(let P=0;P<R;P++){let F=b(-f+n.margin+(P+.5)/R*2*(f-n.margin)),H=z.find(tt=>F.foot>=tt.low-1e-6&&F.foot<=tt.high+1e-6),O=Math.min(6/s.scale,l>0?l:.1);if(!H){S.push(ut("path",{class:"ray","marker-end":`url(#${o}-arrow)`,d:`M${C(F.above,null)}L${C(F.enters,l)}L${C(w(F,O),O)}`}));continue}let st=H.v!==null&&H.v<l+p?H.v:l+p*.8,[Z,j]=s.at(w(F,st),st);S.push(ut("path",{class:"ray lost",d:`M${C(w(F,st),st)}L${st>l?`${C(F.enters,l)}L`:""}${C(w(F,O),O)}`}),ut("path",{class:"ray",d:`M${C(F.above,null)}L${C(w(F,st),st)}`}),ut("path",{class:H.share>0?"stop part":"stop",d:`M${q(Z-5)} ${q(j-5)}L${q(Z+5)} ${q(j+5)}M${q(Z-5)} ${q(j+5)}L${q(Z+5)} ${q(j-5)}`}))}let U=[],V=z.find(P=>P.part);if(V){let P=V.v!==null&&V.v>=l+p,F=[V.v!==null?gt("{height} above the rib",{height:Un(V.v,1)}):"",Math.abs(V.along??0)>.5?`${Un(Math.abs(V.along),1)} ${V.along>0?gt("ahead"):gt("back")}`:""].filter(Boolean).join(", "),H=b(-f),O=V.v!==null&&!P?V.v:l+p,[st,Z]=s.at(Math.min(H.above,H.enters,H.foot),O),j=`${a(V.part)}${F?`, ${F}`:""}`;U.push(ut("text",{class:"caster","text-anchor":"end",x:q(Math.max(st-8,s.left+yr(j,12,600)+2)),y:q(Math.max(s.ceiling+12,Z-4)),"data-part":V.part},j))}return{drawn:S,told:U}}function b0(i){let t=new Map;i.owner.forEach((n,s)=>{t.has(n)||t.set(n,[]),t.get(n).push(s)});let e=new Map;for(let[n,s]of t)e.set(n,n1(i.segments,s));return e}function n1(i,t){let e=[],n=new Map,s=(h,d)=>{let[f,g]=[Math.round(h/.001),Math.round(d/.001)];for(let[_,p]of[[f,g],[f+1,g],[f-1,g],[f,g+1],[f,g-1]]){let m=n.get(`${_},${p}`);if(m!==void 0&&Math.hypot(e[m][0]-h,e[m][1]-d)<=.001)return m}return e.push([h,d]),n.set(`${f},${g}`,e.length-1),e.length-1},r=new Map,o=(h,d,f)=>{r.has(h)||r.set(h,[]),r.get(h).push([d,f])};for(let h of t){let d=s(i[4*h],i[4*h+1]),f=s(i[4*h+2],i[4*h+3]);d!==f&&(o(d,h,f),o(f,h,d))}let a=new Set,l=h=>{let d=[h];for(let f=h;;){let g=r.get(f)?.find(([_])=>!a.has(_));if(!g||(a.add(g[0]),f=g[1],d.push(f),f===h))return d}},c=[],u=[...r.keys()].sort((h,d)=>(r.get(h).length%2?0:1)-(r.get(d).length%2?0:1));for(let h of u)for(;r.get(h).some(([d])=>!a.has(d));)c.push(l(h).map(d=>e[d]));return i1(c)}function i1(i){let t=i.filter(n=>La(n)),e=i.filter(n=>!La(n));for(;e.length;){let n=e.pop();for(let s=!0;s&&!La(n);){s=!1;let r=n[n.length-1];for(let o=0;o<e.length;o++){let a=e[o];if(Hd(r,a[0]))n=[...n,...a];else if(Hd(r,a[a.length-1]))n=[...n,...[...a].reverse()];else continue;e.splice(o,1),s=!0;break}}t.push(n)}return t}var Hd=(i,t)=>Math.hypot(i[0]-t[0],i[1]-t[1])<=.05,La=i=>i.length>2&&Hd(i[0],i[i.length-1]);function M0(i,t){return t===0?i:i?.map(e=>e.map(([n,s])=>[n,s-t*n]))}function Da(i,t){let e=[];for(let s of i??[])for(let r=0;r<s.length;r++){let o=s[r],a=s[(r+1)%s.length];o[0]<=t!=a[0]<=t&&e.push(o[1]+(t-o[0])/(a[0]-o[0])*(a[1]-o[1]))}e.sort((s,r)=>s-r);let n=[];for(let s=0;s+1<e.length;s+=2)n.push([e[s],e[s+1]]);return n}var y0=.01;function S0(i,t,e,n,s,r){let o=[],a=0;for(let l=0;a<r&&l<2e3;l++){let c=n*(l+.5)*y0,u=v0(Da(t,c),e).map(([p])=>p),d=v0(Da(i,c),e).filter(([p])=>p<.5).map(([,p])=>p);if(!u.length||!d.length){if(a>0)break;continue}let f=Math.max(...d.filter(p=>p<Math.min(...u)+.5)),g=Math.min(...u.filter(p=>p>f-.5));if(!Number.isFinite(f)||!Number.isFinite(g)){if(a>0)break;continue}let _=g-s;if(_>f)o.push({u:c,low:f,high:_,drawn:g}),a+=(_-f)*y0;else if(a>.02)break}return o}function v0(i,t){return t>0?i:i.map(([e,n])=>[-n,-e]).reverse()}var _h=3;function T0(i){let{joint:t,facts:e,contour:n,station:s,words:r,width:o,height:a,key:l,frame:c}=i,u=n.stations.s[s],h=_t=>n.stations[_t]?.[s]??null,d=du(i.findings,t,n,s),f=t.rib_on==="none"||d.some(_t=>_t.rule==="rib-missing"&&!_t.waived),g=o<560?100:112,_=d.slice(0,_h).map(_t=>c1(_t,n,s,r,o)),p=_.reduce((_t,Nt)=>_t+Nt.length,0)+(d.length>_h?1:0),m=74+(p?p*16:0),y={x:g,y:m,w:o-2*g,h:a-m-34},E=Math.min(y.w/(c.right-c.left),y.h/(c.top-c.bottom)),b=c.left-(y.w/E-(c.right-c.left))/2,C=c.top+(y.h/E-(c.top-c.bottom))*.15,w=_t=>y.x+(_t-b)*E,x=_t=>y.y+(C-_t)*E,S=i.sections?.slope(s)??0,z=(_t,Nt)=>[w(_t),x(Nt+S*_t)],I={at:z,scale:E,ceiling:y.y-24,left:y.x},R=t.rib_on==="cover"?-1:1,U=ut("svg",{class:"section-drawing",viewBox:`0 0 ${q(o)} ${q(a)}`,width:q(o),height:q(a),role:"img","aria-label":gt("Section across the seam at s = {place}",{place:Un(u,2)}),"data-slope":S});U.append(ut("defs",null,gh(`${l}-base`,"hatch-base",6,45),gh(`${l}-cover`,"hatch-cover",15,-45),gh(`${l}-other`,"hatch-other",5,90),gh(`${l}-trap`,"hatch-trap",4,90),ut("clipPath",{id:`${l}-window`},ut("rect",{x:y.x,y:y.y-24,width:y.w,height:y.h+24})),ut("marker",{id:`${l}-arrow`,viewBox:"0 0 10 6",refX:9.5,refY:3,markerWidth:9,markerHeight:6,orient:"auto-start-reverse"},ut("path",{d:"M0 0.6 L10 3 L0 5.4 Z",class:"arrow-head"})),ut("marker",{id:`${l}-to`,viewBox:"0 0 10 10",refX:8,refY:5,markerWidth:4.5,markerHeight:4.5,orient:"auto"},ut("path",{d:"M0 0 L10 5 L0 10 Z",fill:"context-stroke"}))));let V=i.sections?.at(s)??null,P=V?b0(V):new Map,F=ut("g",{"clip-path":`url(#${l}-window)`});U.append(F);let H=(h("rib_width_top")??h("rib_width"))===null?null:(h("rib_width_top")??h("rib_width"))/2,O=e.drop,st=i.sections?.shadeAt(s)??[],Z=H===null?null:x0(h,H,R,e,I,st,l,_t=>r.part(_t));Z&&F.append(...Z.drawn);let j=[{side:-1,name:"inner",columns:[]},{side:1,name:"outer",columns:[]}],tt=R>0?0:1,ct=R>0?0:-(O??0);if(!f&&O!==null){let _t=Nt=>M0(P.get(Nt),S);for(let Nt of j){let Ut=h(`trap_area_${Nt.name}`);Ut===null||!P.size||(Nt.columns=S0(_t(tt),_t(1-tt),R,Nt.side,O,Ut),Nt.columns.length>=2&&F.append(...h1(Nt.columns,R,ct,z,l)))}}let at=new Set(st.map(_t=>i.sections?.ownerOf(_t.part)).filter(_t=>_t!==void 0));for(let _t of[...P.keys()].sort((Nt,Ut)=>E0(Nt)-E0(Ut))){let Nt=_t===0?"base":_t===1?"cover":"other",Ut=P.get(_t).map(ee=>mh(ee,w,x)).join("");F.append(ut("path",{class:`body ${Nt}`,d:Ut,"fill-rule":"evenodd"}),ut("path",{class:"hatching",d:Ut,"fill-rule":"evenodd",fill:`url(#${l}-${Nt})`}),ut("path",{class:`outline ${Nt}${at.has(_t)?" casts":""}`,d:Ut,"data-part":Nt==="other"?i.sections?.partOf(_t):null}))}let $=!f&&H!==null&&e.collapse!==null&&P.get(tt)!==void 0;if($){let _t=`${l}-melt`,Nt=H*1.6,Ut=-e.collapse*R;U.querySelector("defs").append(ut("clipPath",{id:_t},ut("path",{d:P.get(tt).map(Re=>mh(Re,w,x)).join(""),"clip-rule":"evenodd"})));let ee=R>0?P.get(1):void 0,he=ut("g",ee?{"clip-path":`url(#${_t}-pressed)`}:{});ee&&U.querySelector("defs").append(ut("clipPath",{id:`${_t}-pressed`},ut("path",{d:ee.map(Re=>mh(Re,w,Ce=>x(Ce-O))).join(""),"clip-rule":"evenodd"})));let ne=[z(-Nt,0),z(Nt,0),z(Nt,Ut),z(-Nt,Ut)];he.append(ut("path",{class:"melt","clip-path":`url(#${_t})`,d:`M${ne.map(([Re,Ce])=>`${q(Re)} ${q(Ce)}`).join("L")}Z`})),F.append(he)}!f&&O!==null&&P.get(1)&&F.append(ut("path",{class:"moved",d:P.get(1).map(_t=>mh(_t,w,Nt=>x(Nt-O))).join("")}));let[dt,pt]=[b+y.w/E,C-y.h/E];for(let _t of P.values()){for(let Nt of[b,dt])for(let[Ut,ee]of Da(_t,Nt))F.append(...w0([w(Nt),x(Ut)],[w(Nt),x(ee)]));for(let[Nt,Ut]of Da(u1(_t),pt))F.append(...w0([w(Nt),x(pt)],[w(Ut),x(pt)]))}U.append(...Z?.told??[]),P.size?i.sections?.isNeighbour(s)&&U.append(ut("text",{class:"empty",x:o/2,y:a-11,"text-anchor":"middle"},gt("outline of the next station; values of this one"))):U.append(ut("text",{class:"empty",x:o/2,y:a-40,"text-anchor":"middle"},i.sections?gt("No section was kept at this station."):gt("The document carries no section outlines.")));let vt=new ph(U,r,e.bands,d,l,n,s,y,o),bt=s1(i,vt,{half:H,at:z,plot:y,sides:j,up:R,sunk:ct,ribless:f,melts:$,slope:S,X:w,Y:x});return vt.settle(y.y-26,a-24),l1(U,d,vt,i,bt,y,w,x,_),U.append(...d1(y.x+4,a-16,E)),U.append(ut("text",{class:"side",x:12,y:q(a-8)},`◂ ${gt("inner")}`),ut("text",{class:"side",x:q(o-12),y:q(a-8),"text-anchor":"end"},`${gt("outer")} ▸`)),U}function s1(i,t,e){let{contour:n,facts:s,compact:r,width:o}=i,{half:a,at:l,plot:c,sides:u,up:h,ribless:d}=e,f=I=>t.value(I),g=f("gap")??0,_=f("cover_thickness"),p=(_??0)+(h>0?g:0),m=c.y-8,y=c.y-36,E=a??.5,b=Math.min(f("rib_height")??.6,4),C={rib:l(0,-.35*b*h),flank_inner:l(-E,-.5*b*h),flank_outer:l(E,-.5*b*h),cover:l(E*.4,p*.6),gap:l(-E*.7,g/2*h),light:[l(0,p)[0],l(0,p)[1]-14],below:l(0,-(b+.7)*h),land:l(E+s.margin+.5,p),other:l(0,0)};a!==null&&!d&&(t.across(l(-a,0)[0],l(a,0)[0],y,[l(-a,0)[1],l(a,0)[1]],{column:"rib_width",title:gt("rib width"),judged:["rib_width_top"]}),Zs(t,"rib_width",I=>[[l(-I/2,0),l(-I/2,-b*h)],[l(I/2,0),l(I/2,-b*h)]],I=>[-1,1].map(R=>[l(R*a,-b*h*.75),l(R*I/2,-b*h*.75)])));let w=f("clamp_land"),x=zd(n);if(a!==null&&w!==null&&x){let I=(f(x>0?"light_enters_outer":"light_enters_inner")??x*a)+x*s.margin,R=l(I,p),U=l(I+x*w,p);C.land=[(R[0]+U[0])/2,(R[1]+U[1])/2];let V=x>0?[R[1],U[1]]:[U[1],R[1]],P=f("clamp_tilt")!==null&&t.finding({column:"clamp_tilt",title:""})!==null;if(t.across(R[0],U[0],m,V,{column:"clamp_land",title:o<560?gt("land"):gt("land from the beam's edge")},x),s.margin>0){let F=l(I-x*s.margin,p);t.margin(F,R,m,x,`${gt("beam margin")} ${Un(s.margin,2)}`)}if(Zs(t,"clamp_land",F=>[[l(I+x*F,p-.7),l(I+x*F,p+.25)]],F=>[[l(I+x*w,p),l(I+x*F,p)]]),P){let F=[U[0],R[1]];t.sketch("reference",[R,F]),t.change(t.finding({column:"clamp_tilt",title:""}),U,F),t.leader(x,[(U[0]+F[0])/2,(U[1]+F[1])/2],{column:"clamp_tilt",title:gt("tilt of the land")})}}if(_!==null){let I=h>0?g:0,R=a??0;t.along(1,l(R,I+_),l(R,I),{column:"cover_thickness",title:gt("cover"),judged:["cover_thickness_min","cover_thickness_max"]}),Zs(t,"cover_thickness",U=>[[l(-R*1.6,I+U),l(R*1.6,I+U)]],U=>[[l(R*.6,I+_),l(R*.6,I+U)]])}let S=t.finding({column:"transmission",title:""});if(S?.change&&_!==null){let I=h>0?g:0,R=a??.6,U=I+_-S.change;t.sketch(`ghost ${pn(S)}`,[l(-R*1.6,U),l(R*1.6,U)]),t.change(S,l(R*.6,I+_),l(R*.6,U))}Zs(t,"gap",I=>[[l(-E*1.5,I*h),l(E*1.5,I*h)]],I=>[[l(E*.5,g*h),l(E*.5,I*h)]]),r1(i,t,e),o1(i,t,e),f("gap")!==null&&t.leader(-1,C.gap,{column:"gap",title:gt("gap"),judged:["gap_min","gap_max"]});let z=g-(s.drop??0)+(s.collapse??0)<.02;if(e.melts&&z&&f("melt_area")!==null&&!r&&t.leader(-1,l(-a*.5,-s.collapse*.5*h),{column:"melt_area",title:gt("melts")}),d)return C;for(let{side:I,name:R,columns:U}of u){let V=f(`rib_height_${R}`),P=a===null?0:I*a;if(V!==null&&V<6){let tt=V===f("rib_height");t.along(I,l(P,0),l(P,-V*h),{column:`rib_height_${R}`,title:gt("rib height"),judged:tt?["rib_height"]:[]}),tt&&Zs(t,"rib_height",$=>[[l(P,-$*h),l(P+I*1.2,-$*h)]],$=>[[l(P+I*.6,-V*h),l(P+I*.6,-$*h)]],[`rib_height_${R}`]);let ct=f("rib_width_mid");ct!==null&&tt&&Zs(t,"slenderness",$=>[[l(P,-$*ct*h),l(P+I*1.2,-$*ct*h)]],$=>[[l(P+I*.6,-V*h),l(P+I*.6,-$*ct*h)]]);let at=f(`draft_${R}`);if(at!==null&&a!==null){let $=dt=>l(P+I*V*Math.tan(dt*Math.PI/180),-V*h);Zs(t,`draft_${R}`,dt=>[[l(P,0),$(dt)]],dt=>[[$(at),$(dt)]])}}let F=f(`trap_area_${R}`),H=U[Math.floor(U.length/2)],O=U[U.length-1],st=H?l(H.u,(H.low+H.high)/2*h+e.sunk):l(I*E*2,-.5*b*h);if(C[`trap_${R}`]=st,C[`exit_${R}`]=O?l(O.u,O.high*h+e.sunk):st,F!==null){let tt=f(`trap_room_${R}`),ct=f("melt_area"),at={column:`trap_area_${R}`,title:gt("trap, collapsed"),judged:[`trap_room_${R}`,`trap_corner_${R}`,"trap_room"]},$=t.finding(at),dt=s.bands.find(pt=>pt.rule==="trap-side")?.words??"";if(t.leader(I,st,{...at,also:[...tt===null||$?[]:[`${_i(tt,2)} × ${gt("½ melt")}${dt?`, ${dt}`:""}`],...ct===null?[]:[`${gt("½ melt")} ${xf(ct/2,2)}`],...$?.wide&&$.change?[gt("width {now} → {wanted}",{now:Un($.wide,2),wanted:Un($.wide+$.change,2)})]:[]]}),$?.change&&O&&U.length>2){let pt=O.u+I*$.change,vt=U[Math.floor(U.length/2)].low*h+e.sunk,bt=O.high*h+e.sunk;t.sketch(`ghost ${pn($)}`,[l(pt,vt),l(pt,bt)]),t.change($,l(O.u,(vt+bt)/2),l(pt,(vt+bt)/2)),$.wide&&t.arrows(...l(O.u-I*$.wide,vt+.15*(bt-vt)),...l(O.u,vt+.15*(bt-vt)),pn($))}}let Z=t.finding({column:`trap_open_${R}`,title:""});if(Z&&O){let tt=s.bands.find(pt=>pt.rule==="lip-gap")?.edges.find(pt=>pt.column===`lip_gap_${R}`),ct=typeof tt?.low=="number"&&typeof tt.high=="number"?(tt.low+tt.high)/2:.2,at=U[Math.floor(U.length/2)].low*h+e.sunk,$=O.high*h+e.sunk-ct*h,dt=O.u+I*.8;t.sketch(`ghost ${pn(Z)}`,[l(O.u,at),l(O.u,$)]),t.sketch(`ghost ${pn(Z)}`,[l(O.u,$),l(dt,$)]),t.sketch(`ghost ${pn(Z)}`,[l(dt,$),l(dt,at)])}let j=f(`lip_gap_${R}`);if(j!==null&&(!r||t.finding({column:`lip_gap_${R}`,title:""}))){let tt={column:`lip_gap_${R}`,title:gt("lip gap")};if(!O)t.leader(I,C[`exit_${R}`],tt);else{let ct=t.finding(tt),at=O.u+I*.12,$=O.high*h+e.sunk,dt=$-j*h;t.arrows(...l(at,$),...l(at,dt),ct?pn(ct):""),t.leader(I,l(at,($+dt)/2),tt),Zs(t,`lip_gap_${R}`,pt=>[[l(O.u,$-pt*h),l(O.u+I*.9,$-pt*h)]],pt=>[[l(at+I*.35,dt),l(at+I*.35,$-pt*h)]])}}}return C}function Zs(i,t,e,n,s=[]){let r=i.finding({column:t,title:"",judged:[`${t}_top`,`${t}_min`,`${t}_max`,...s]});if(!(!r||r.goal===null)){for(let o of e(r.goal))i.sketch(`ghost ${pn(r)}`,o);for(let[o,a]of n(r.goal))i.change(r,o,a)}}function r1(i,t,{at:e,X:n,Y:s,plot:r,up:o}){let a={column:"free_travel",title:gt("free travel"),judged:["free_travel"]},l=t.finding(a),c=t.value("free_travel");if(!l||l.goal===null)return;let u=l.station===i.station||c===null?l.number:c,h=l.met&&fh({...l,at:l.met},i.joint,i.contour,i.station),d=h?null:m0(l,i.joint,i.contour,i.station),[f,g]=d??[h?.[0]??0,o>0?t.value("gap")??0:0],_=d?[n(f),s(g)]:e(f,g);if(u===null||_[0]<r.x||_[0]>r.x+r.w)return;let p=Math.abs(s(1)-s(0)),m=y=>[_[0],_[1]+y*p];t.sketch(`ghost ${pn(l)}`,[[_[0]-26,m(l.goal)[1]],[_[0]+26,m(l.goal)[1]]]),t.change(l,m(u),m(l.goal)),t.along(_[0]>r.x+r.w/2?1:-1,_,m(u),a)}function o1(i,t,{X:e,Y:n,plot:s}){let r=t.finding({column:"beam_clear",title:"",judged:["light_clear"]});if(!r?.way||!r.change)return;let o=(i.sections?.shadeAt(i.station)??[]).filter(f=>f.v!==null&&f.part);if(!o.length)return;let a=r.way==="outward"?1:-1,l=Math.min(...o.map(f=>f.v)),c=o.map(f=>f.leans&&f.u!==null?[f.u,f.u]:[f.low,f.high]),u=a<0?Math.max(...c.map(f=>f[1])):Math.min(...c.map(f=>f[0]));if(n(l)<s.y||e(u)<s.x||e(u)>s.x+s.w)return;let h=u+a*r.change,d=Math.max(n(l)-32,s.y+6);t.sketch(`ghost ${pn(r)}`,[[e(h),d-12],[e(h),d+26]]),t.change(r,[e(u),d],[e(h),d]),t.word(r,[e(u)+(a<0?8:-8),d+5],a<0?"start":"end",Un(r.change,2))}function a1(i,t){let e=i.column||i.quantity,n=e.endsWith("_inner")?"inner":e.endsWith("_outer")?"outer":"",s=e.startsWith("draft")?`flank_${n}`:e.startsWith("trap_open")||e.startsWith("lip")?`exit_${n}`:e.startsWith("trap")?`trap_${n||"outer"}`:e.startsWith("clamp")?"land":/^(beam|light|spot|path_in_cover)/.test(e)?"light":/^(cover|transmission|mean_path)/.test(e)?"cover":/^(gap|free_travel|stop|local_collapse|collapse)/.test(e)?"gap":/^(support|overhang|wall|nest)/.test(e)?"below":/^(rib|slenderness|melt)/.test(e)?"rib":"other";return t[s]??t.other}function l1(i,t,e,n,s,r,o,a,l){let c={left:r.x,right:r.x+r.w,top:r.y-24,bottom:r.y+r.h},u=([g,_])=>g>=c.left&&g<=c.right&&_>=c.top&&_<=c.bottom,h=new Map;for(let g of t){if(e.shown.has(g))continue;let _=g.column&&n.contour.stations[g.column]?null:fh(g,n.joint,n.contour,n.station),p=_?g0(_):"",m=_&&p?[o(_[0]),a(_[1])]:null,y=(x,S,z)=>Math.max(x,Math.min(z,S)),[E,b]=m?[y(c.left+6,m[0],c.right-6),y(c.top+30,m[1],c.bottom-6)]:a1(g,s),C=`${Math.round(E/8)},${Math.round(b/8)}`,w=h.get(C)??0;if(h.set(C,w+1),i.append(p0(g,E,b,w,c)),m&&(!u(m)||_[2]>.6)){let x=E<(c.left+c.right)/2;i.append(ut("path",{class:`change ${pn(g)}`,d:`M${q(E-Math.sign(m[0]-E)*18)} ${q(b-Math.sign(m[1]-b)*18)}L${q(E)} ${q(b)}`,"marker-end":`url(#${n.key}-to)`}),ut("text",{class:"pin-where",x:q(x?E+36:E-12),y:q(b-2),"text-anchor":x?"start":"end"},p))}}let d=t.slice(_h).length,f=0;t.slice(0,_h).forEach((g,_)=>{for(let p of l[_])i.append(ut("text",{class:`mark-line ${pn(g)}`,x:12,y:q(15+f++*16),"data-mark":g.n},p))}),d&&i.append(ut("text",{class:"mark-line",x:12,y:q(15+f*16)},gt("and {count} more here",{count:d})))}function c1(i,t,e,n,s){return Ys(f0(i,Gd(i,t,e,n)),s-28,3,13,600)}function h1(i,t,e,n,s){let r=Wd(i,a=>a.low*t+e,a=>a.high*t+e,n),o=t>0?Wd(i,a=>a.high,a=>a.drawn,n):Wd(i,a=>e-a.low,a=>-a.low,n);return[ut("path",{class:"trap-lost",d:o}),ut("path",{class:"trap",d:r}),ut("path",{fill:`url(#${s}-trap)`,d:r})]}var u1=i=>i.map(t=>t.map(([e,n])=>[n,e]));function w0([i,t],[e,n]){let s=Math.hypot(e-i,n-t),r=Math.max(2,Math.round(s/9)),[o,a]=[(e-i)/r,(n-t)/r],[l,c]=[-a/Math.hypot(o,a),o/Math.hypot(o,a)],u=`M${q(i)} ${q(t)}`;for(let h=1;h<=r;h++){let d=h===r?0:h%2?5:-5;u+=`L${q(i+h*o+d*l)} ${q(t+h*a+d*c)}`}return[ut("path",{class:"torn gap",d:u}),ut("path",{class:"torn",d:u})]}var E0=i=>i===0?1:i===1?2:0;function mh(i,t,e){return"M"+i.map(([n,s])=>`${q(t(n))} ${q(e(s))}`).join("L")+(La(i)?"Z":"")}function Wd(i,t,e,n){let s=(a,l)=>n(a,l).map(q).join(" "),r=i.map(a=>s(a.u,t(a))),o=[...i].reverse().map(a=>s(a.u,e(a)));return`M${[...r,...o].join("L")}Z`}function gh(i,t,e,n){return ut("pattern",{id:i,width:e,height:e,patternUnits:"userSpaceOnUse",patternTransform:`rotate(${n})`},ut("line",{class:t,x1:0,y1:0,x2:0,y2:e}))}function d1(i,t,e){let n=Ei()*e,s=Ei()===1?[1,2,5,10]:[.02,.05,.1,.2,.5],r=s.find(a=>a*n>35)??s[s.length-1],o=[];for(let a=0;a<4;a++)o.push(ut("rect",{class:a%2?"scale-light":"scale-dark",x:q(i+a*r*n/4),y:t,width:q(r*n/4),height:4}));return o.push(ut("text",{class:"side scale-length",x:q(i+r*n+6),y:t+5},`${_i(r,r<1?r<.1?2:1:0)} ${Qs()}`)),o}var f1=0,Xd=new WeakMap,Na=class{constructor(t,e,n=!1){this.host=t;this.atlas=e;this.compact=n;new ResizeObserver(()=>{let s=t.getBoundingClientRect();Math.abs(s.width-this.size.width)<1&&Math.abs(s.height-this.size.height)<1||(this.size={width:s.width,height:s.height},this.place&&this.show(this.place))}).observe(t)}host;atlas;compact;key=`sec${f1++}`;place=null;size={width:0,height:0};show(t){if(this.place=t,!this.size.width){let r=this.host.getBoundingClientRect();this.size={width:r.width,height:r.height}}let e=Math.max(320,this.size.width),n=Math.max(280,this.size.height),s=$d(this.atlas,t,e,n,this.key,this.compact);en(this.host),this.host.append(s)}};function $d(i,t,e,n,s,r){let o=i.payload.joints[t.joint],a=o.contours[t.contour],l=i.sectionsOf(o.id,a.id);Xd.has(a)||Xd.set(a,d0(o,a,i.payload.facts[t.joint].margin,l));let c=fl(i).shown(o.id,{facts:i.payload.facts[t.joint],contour:a,sections:l,findings:i.payload.findings});return T0({joint:o,station:t.station,...c,words:i.words,frame:Xd.get(a),width:e,height:n,compact:r,key:s})}function qd(i,t){let e=i.payload.joints[t.joint],n=e.contours[t.contour],{s,x:r,y:o,z:a}=n.stations,l=t.station;return qt("span",null,qt("b",{"data-s":s[l]},`s = ${Un(s[l],2)}`),` · ${gt("station {number} of {count}",{number:l+1,count:s.length})}`,e.contours.length>1?` · ${gt("path")} ${n.id}`:"",` · x ${Rs(r[l],2)}  y ${Rs(o[l],2)}  z ${Rs(a[l],2)} ${Qs()}`)}var m1=i=>[gt("not measured"),gt("within"),gt("close to the limit"),gt("limit broken"),gt("broken, waived"),gt("to be looked at"),gt("noted")][i],A0=[[6.5,1.5],[5.5,3],[4,6],[0,14],[1.5,11],[2,10],[4.5,5]],g1=10,Ua=1e3,vh=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;let s=r=>{let o=this.trackBox();if(!o)return;let a=Math.max(0,Math.min(1,(r.clientX-o.left)/o.width));this.walk.go(this.walk.at(a*this.walk.stretches().length),"strip")};t.addEventListener("pointerdown",r=>{!r.target.closest(".track")||r.target.closest("button")||(t.setPointerCapture(r.pointerId),s(r))}),t.addEventListener("pointermove",r=>{r.buttons&&t.hasPointerCapture(r.pointerId)&&s(r)}),new ResizeObserver(()=>this.moveCursor()).observe(t)}host;atlas;walk;values=[];cursor=qt("div",{class:"strip-cursor","aria-hidden":!0});shownJoint=-1;board=null;trackBox(){return this.host.querySelector(".track")?.getBoundingClientRect()??null}build(){this.shownJoint=this.walk.place.joint,en(this.host),this.values=[];let{stretches:t,length:e}=this.walk.stretches(),{joint:n,facts:s}=this.walk,r=m=>m/e*Ua,o=qt("div",{class:"strip-board"});this.board=o;let a=ut("svg",{class:"ruler",viewBox:`0 0 ${Ua} 30`,preserveAspectRatio:"none","aria-hidden":!0}),l=qt("div",{class:"ruler-numbers","aria-hidden":!0}),c=this.host.clientWidth||1e3,u=c>820?c*.62:c-200,h=Ei()*_1(e/Ei()/Math.max(2,Math.min(8,u/50)));for(let{start:m,length:y,contour:E}of t){a.append(ut("line",{class:"ruler-line",x1:r(m),x2:r(m+y),y1:29,y2:29}));for(let b=0;b<=y+1e-6;b+=h/5){let C=Math.abs(b/h-Math.round(b/h))<1e-6;a.append(ut("line",{class:"ruler-line",x1:q(r(m+b)),x2:q(r(m+b)),y1:C?20:25,y2:29})),C&&y-b>Math.max(h*.45,e*.075)&&l.append(xh(qt("span",null,Ei()===1?`${Math.round(b)}`:_i(b/Ei(),h/Ei()<1?1:0)),r(m+b)))}e>0&&y>h&&l.append(xh(qt("span",{class:"end"},Rs(y,1)),r(m+y))),t.length>1&&l.append(xh(qt("b",null,n.contours[E].id),r(m+y/2))),this.turns(a,E,m,r)}o.append(qt("div",{class:"strip-head"},gt("unrolled seam, {unit}",{unit:Qs()})),qt("div",{class:"track ruler-track"},a,l,this.marks(r)),qt("div",{class:"strip-head end"},gt("here · limit")));let d=m=>s.bands[m].severity==="must-fix"||this.atlas.payload.findings.some(y=>y.rule===s.bands[m].rule&&y.joint===n.id&&y.severity!=="note"),f=m=>{let y=this.atlas.payload.findings.filter(E=>E.rule===s.bands[m].rule&&E.joint===n.id&&E.severity!=="note");return y.some(E=>E.severity==="must-fix"&&!E.waived)?0:y.length?1:d(m)?2:3},g=s.bands.map((m,y)=>y).sort((m,y)=>f(m)-f(y)),_=new Set(g.filter((m,y)=>d(m)&&(y<g1||f(m)<2)));for(let m of g){let y=s.bands[m],E=_.has(m)?"":" more",b=ut("svg",{viewBox:`0 0 ${Ua} 14`,preserveAspectRatio:"none",role:"img","aria-label":this.spoken(m)});for(let{contour:w,start:x}of t){let S=n.contours[w],z=s.tracks[S.id]?.[m]??[];for(let[I,R,U]of z){let V=r(x+yh(S.stations.s,I,0,S.length_mm)),P=r(x+yh(S.stations.s,R,1,S.length_mm)),F=U>2?Math.max(7,P-V):P-V;b.append(ut("rect",{class:`cell ${Vo[U]}`,x:q((V+P-F)/2),y:A0[U][0],width:q(F),height:A0[U][1]}))}}let C=qt("div",{class:`strip-value${E}`,"data-rule":y.rule});this.values[m]=C,o.append(qt("div",{class:`strip-label${E}`,title:y.title},y.title),qt("div",{class:`track${E}`},b),C)}let p=g.length-_.size;if(this.host.append(this.cursor,o),document.documentElement.style.setProperty("--strip",`${Math.ceil(o.getBoundingClientRect().height)+(p?38:18)}px`),p){let m=qt("button",{type:"button",class:"strip-more screen","aria-expanded":!1},gt("{count} further rules",{count:p}));m.addEventListener("click",()=>{let y=o.classList.toggle("open");m.setAttribute("aria-expanded",String(y)),m.textContent=y?gt("fewer rules"):gt("{count} further rules",{count:p}),this.moveCursor()}),this.host.append(m)}}turns(t,e,n,s){let{stations:r,length_mm:o}=this.walk.joint.contours[e],a=r.corner_radius;if(a)for(let l=0;l<a.length;l++){if(a[l]===null||a[l]>60)continue;let c=l;for(;c+1<a.length&&a[c+1]!==null&&a[c+1]<=60;)c++;let[u,h]=[yh(r.s,l,0,o),yh(r.s,c,1,o)];t.append(ut("rect",{class:"turn",x:q(s(n+u)),width:q(s(h)-s(u)),y:20,height:9},ut("title",null,gt("bend of the seam")))),l=c}}marks(t){let e=this.atlas.payload.findings,n=qt("div",{class:"strip-marks"}),{stretches:s}=this.walk.stretches(),r=[];for(let u of e)if(!(u.joint!==this.walk.joint.id||u.station===null||al(u)))for(let h of as(u)){let d=this.walk.joint.contours.findIndex(f=>f.id===h.contour);r.push({x:t(s[d].start+this.walk.joint.contours[d].stations.s[h.station]),findings:[u],spot:h})}let o=this.host.clientWidth||1e3,a=o>820?o*.62:o-200,l=r.length>8?Ha:Cs,c=u=>Math.max(24,l(u.findings).length*7.5+6)/2;r.sort((u,h)=>u.x-h.x);for(let u=0;u+1<r.length;){let[h,d]=[r[u],r[u+1]];if((d.x-h.x)*a/Ua>=c(h)+c(d)+3){u++;continue}let f=[...new Set([...h.findings,...d.findings])].sort((g,_)=>g.n-_.n);r.splice(u,2,{spot:f[0]===h.findings[0]?h.spot:d.spot,x:(h.x*h.findings.length+d.x*d.findings.length)/(h.findings.length+d.findings.length),findings:f}),u=Math.max(0,u-1)}for(let{x:u,findings:h,spot:d}of r){let f=h[0],g=qt("button",{type:"button",class:`strip-mark ${f.waived?"waived":f.severity}`,"data-finding":f.n,"aria-label":gt("Go to finding {numbers}: {title}",{numbers:h.map(_=>_.n).join(", "),title:f.title})},l(h));g.addEventListener("click",()=>this.walk.showFinding(f,"finding",d)),n.append(xh(g,u))}return n}spoken(t){let{joint:e,facts:n}=this.walk,s=[];for(let o of e.contours)for(let[a,l,c]of n.tracks[o.id]?.[t]??[])c!==1&&s.push(gt("{state} from {low} to {high}",{state:m1(c),low:Rs(o.stations.s[a],1),high:Un(o.stations.s[l],1)}));let r=n.bands[t];return`${r.title}, ${r.words}: ${s.length?s.slice(0,6).join("; "):gt("within everywhere")}`}show(t){t.joint!==this.shownJoint&&this.build();let{contour:e,facts:n,s,joint:r}=this.walk,o=this.atlas.words,a=this.walk.findingsHere();n.bands.forEach((l,c)=>{let u=a.find(p=>p.rule===l.rule),h=this.values[c];en(h);for(let p of["must-fix","attention","note","waived"])h.classList.remove(p);u&&h.classList.add(u.waived?"waived":u.severity);let d=qt("span",{class:"values"},u?`${Lr[u.severity]} `:""),f=l.columns.filter(p=>Array.isArray(e.stations[p])).map(p=>{let m=e.stations[p][t.station]??null,y=m===null?o.reason(r.id,e.id,p,s):"",E=m===null?"–":l.columns.length>1&&o.unit(p)?o.bare(m,p):o.value(m,p);return qt("b",{"data-column":p,"data-value":String(m),title:y||o.title(p)},E)});!f.length&&u&&f.push(qt("b",{"data-finding":u.n},u.value)),f.forEach((p,m)=>d.append(m?" / ":"",p)),h.dataset.state=u?u.waived?"waived":u.severity:"";let g=u?void 0:a.find(p=>p.also.includes(l.rule)),_=g?gt("see finding {number}",{number:g.n}):u?.limit_short||l.words||"";h.append(d,qt("span",{class:"limit",title:u?.limit||_},_))}),this.moveCursor()}moveCursor(){let t=this.trackBox();if(!t||!this.board)return;let e=this.host.getBoundingClientRect(),n=this.walk.unrolled/this.walk.stretches().length;this.cursor.style.transform=`translateX(${q(t.left-e.left+n*t.width)}px)`,this.cursor.style.height=`${q(this.board.getBoundingClientRect().height)}px`,this.cursor.dataset.share=n.toFixed(5)}};function xh(i,t){return i.style.left=`${t/Ua*100}%`,i}function yh(i,t,e,n){return e===0?t===0?0:(i[t-1]+i[t])/2:t===i.length-1?Math.max(n,i[t]):(i[t]+i[t+1])/2}function _1(i){let t=10**Math.floor(Math.log10(i));return[1,2,5,10].map(e=>e*t).find(e=>e>=i*.75)??10*t}var bh=class{constructor(t){this.walk=t;this.slider.addEventListener("input",()=>{this.walk.go(this.walk.at(Number(this.slider.value)),"slider")});let e=(s,r)=>fe(s)?.addEventListener("click",r);e("walk-back",()=>this.walk.step(-1)),e("walk-on",()=>this.walk.step(1));let n=s=>{let r=this.walk.neighbourFinding(s);r&&this.walk.showFinding(r.finding,"finding",r.spot)};e("finding-back",()=>n(-1)),e("finding-on",()=>n(1)),this.slider.addEventListener("keydown",s=>{Mh(s,this.walk)&&s.preventDefault()})}walk;slider=fe("walk-slider");where=fe("walk-where");show(t){let{length:e}=this.walk.stretches();this.slider.max=String(e),this.slider.step="any",this.slider.value=String(this.walk.unrolled);let n=this.walk.findingsHere(),s=this.walk.s,r=`s = ${Un(s,2)}`;this.slider.setAttribute("aria-valuetext",r+(n.length?`, ${gt("Finding")} ${n.map(c=>`${c.n} ${c.title}`).join(", ")}`:"")),en(this.where);let o=this.walk.contour;this.where.append(qt("b",{"data-station":t.station},r),qt("span",null,`${t.station+1} / ${o.stations.s.length}${this.walk.joint.contours.length>1?` · ${o.id}`:""}`));let a=fe("walk-live"),l=n.map(c=>`${gt("Finding")} ${c.n}: ${c.title}`).join(". ");a&&a.textContent!==l&&(a.textContent=l)}};function Mh(i,t){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let e=i.shiftKey?10:1;switch(i.key){case"ArrowRight":case"ArrowUp":return t.step(e),!0;case"ArrowLeft":case"ArrowDown":return t.step(-e),!0;case"Home":return t.go({station:0},"keys"),!0;case"End":return t.go({station:t.contour.stations.s.length-1},"keys"),!0;case"PageDown":case"PageUp":{let n=t.neighbourFinding(i.key==="PageDown"?1:-1);return n&&t.showFinding(n.finding,"keys",n.spot),!0}}return!1}async function x1(){let i=fe("seamcheck-data");if(I0(()=>{}),!i)return;let t=await Sf(i);if(_f(t.voice),document.documentElement.classList.add("alive"),!t.joints.length||!t.joints.some(_=>_.contours.length)){document.documentElement.dataset.ready="yes";return}let e=new Wa(t),n=new ol(t),s=new Na(fe("section-figure"),e),r=new Na(fe("section-beside"),e,!0),o=new dl(fe("plan-figure"),e,n),a=new vh(fe("strip"),e,n),l=new bh(n),c=new cl(fe("charts-judged"),fe("charts-within"),fe("charts-further"),e,n),u=new Yd(e,n),h=!1;Io(fe("section-beside"),()=>{h=!0,r.show(n.place)}),n.listen((_,p)=>{s.show(_),h&&r.show(_),o.show(_),a.show(_),l.show(_),c.show(_),u.show(_,p==="finding"||p==="keys-finding");for(let m of["section-caption","beside-caption"]){let y=fe(m);en(y),y.append(qd(e,_))}b1(e,n),M1(n)});for(let _ of["section-figure","plan-figure","strip","section-beside"])fe(_).addEventListener("keydown",p=>{Mh(p,n)&&p.preventDefault()});for(let _ of document.querySelectorAll("[data-go]"))_.addEventListener("click",p=>{let m=t.findings.find(y=>String(y.n)===_.dataset.go);m&&m.station!==null&&(p.preventDefault(),n.showFinding(m),_.dataset.top!==void 0&&fe("desk").scrollIntoView({block:"start"}))});for(let _ of document.querySelectorAll("[data-place]"))_.addEventListener("click",p=>{let[m,y,E]=_.dataset.place.split(" "),b=t.joints.findIndex(w=>w.id===m),C=t.joints[b]?.contours.findIndex(w=>w.id===y)??-1;C<0||(p.preventDefault(),n.go({joint:b,contour:C,station:Number(E)},"finding"))});let d=fe("joint-choice");d?.addEventListener("change",()=>n.go({joint:Number(d.value),contour:0,station:0},"joint")),n.listen(_=>{d&&(d.value=String(_.joint))}),fl(e).wire(()=>{s.show(n.place),h&&r.show(n.place)}),v1(),y1(),fe("show-spread")?.addEventListener("change",_=>{fe("charts").classList.toggle("with-spread",_.target.checked)}),yf(t);let f=S1(e);if(I0(()=>{o.draw(),c.retheme(),u.retheme()}),addEventListener("beforeprint",()=>{document.documentElement.dataset.print="yes";for(let _ of document.querySelectorAll("details.fold:not([open])"))_.open=!0,_.dataset.wasShut="";for(let _ of document.querySelectorAll("input[type=date]"))_.classList.toggle("unset",!_.value);for(let _ of f)_.forPrint();c.forPrint(fe("charts")?.classList.contains("with-spread")?245:318)}),addEventListener("afterprint",()=>{delete document.documentElement.dataset.print;for(let _ of document.querySelectorAll("[data-was-shut]"))_.open=!1,delete _.dataset.wasShut;for(let _ of f)_.forScreen();c.forScreen()}),await document.fonts.ready,addEventListener("hashchange",()=>R0(n)),R0(n)){document.documentElement.dataset.ready="yes";return}let g=t.findings.find(_=>_.station!==null);g?n.showFinding(g,"start"):n.go({joint:0,contour:0,station:0},"start"),document.documentElement.dataset.ready="yes"}function R0(i){let t=decodeURIComponent(location.hash.slice(1)),e=/^f(\d+)$/.exec(t);if(e){let o=i.payload.findings.find(a=>a.n===Number(e[1])&&a.station!==null);return o&&i.showFinding(o),o!==void 0}let n=/^(?:([^/]+)\/([^/]+)\/)?s=(-?[\d.]+)$/.exec(t);if(!n)return!1;let s=n[1]?i.payload.joints.findIndex(o=>o.id===n[1]):0,r=n[2]?i.payload.joints[s]?.contours.findIndex(o=>o.id===n[2])??-1:0;return s<0||r<0?!1:(i.go({joint:s,contour:r,station:fu(i.payload.joints[s].contours[r].stations.s,Number(n[3]))},"finding"),!0)}function y1(){let i=()=>{let t=document.querySelector(`${/^#finding-\d+$/.test(location.hash)?location.hash:"#none"} .sheet-fold`);t&&(t.open=!0)};addEventListener("hashchange",i),i()}function v1(){let i=fe("list-filter"),t=fe("list-order"),e=document.querySelector("#finding-list tbody");if(!i||!t||!e)return;let n=[...e.querySelectorAll("[data-row]")],s=()=>{let r=i.value,o=h=>!r||h.dataset.severity===r||`rule:${h.dataset.rule}`===r;for(let h of n)h.hidden=!o(h);let a=n.filter(o).length;fe("list-count").textContent=a===n.length?`(${n.length})`:gt("({shown} of {all})",{shown:a,all:n.length});for(let h of e.querySelectorAll(".group-head"))h.remove();let l=h=>t.value==="rule"?[h.dataset.rule??"",0]:["",t.value==="s"?Number(h.dataset.s||1e9):0],c=[...n].sort((h,d)=>l(h)[0].localeCompare(l(d)[0])||l(h)[1]-l(d)[1]||Number(h.dataset.row)-Number(d.dataset.row));if(e.append(...c),t.value!=="rule")return;let u=c.filter(o);for(let h of u){let d=u.filter(f=>f.dataset.rule===h.dataset.rule);d[0]===h&&h.before(qt("tr",{class:"group-head"},qt("th",{colspan:3,scope:"rowgroup"},`${h.dataset.title} (${d.length})`)))}};i.addEventListener("change",s),t.addEventListener("change",s)}var Yd=class{constructor(t,e){this.atlas=t;this.walk=e;let n=[...document.querySelectorAll("[data-pane]")],s=r=>{for(let o of n)o.setAttribute("aria-selected",String(o.dataset.pane===r));for(let o of n)o.tabIndex=o.dataset.pane===r?0:-1;fe("pane-plan").hidden=r!=="plan",fe("pane-space").hidden=r!=="space",r==="space"&&this.open()};for(let r of n)r.addEventListener("click",()=>s(r.dataset.pane)),r.addEventListener("keydown",o=>{if(o.key!=="ArrowLeft"&&o.key!=="ArrowRight")return;let a=n[(n.indexOf(r)+1)%n.length];s(a.dataset.pane),a.focus()})}atlas;walk;scene=null;open(){if(this.scene)return;let t=fe("space-figure");this.atlas.meshes.length||t.append(qt("p",{class:"empty"},gt("The document carries no meshes of the parts; the seam is shown alone.")));try{this.scene=new uh(t,this.atlas,this.walk)}catch{en(t),t.append(qt("p",{class:"empty"},gt("This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places.")));return}this.tools(this.scene),this.scene.aslant(!1),this.scene.flyToMarker(),t.addEventListener("keydown",e=>{e.key.startsWith("Page")&&Mh(e,this.walk)&&e.preventDefault()})}tools(t){let e=fe("space-tools"),n=this.atlas.meshes.reduce((o,a)=>o+a.leftOut,0);n&&(fe("space-note").textContent=gt("{count} small faces are left out of this picture; all were measured.",{count:n}));let s=(o,a)=>{let l=qt("button",{type:"button"},o);return l.addEventListener("click",a),l},r=(o,a,l)=>{let c=qt("input",{type:"checkbox"});return c.checked=a,c.addEventListener("change",()=>l(c.checked)),qt("label",null,c,` ${o}`)};Po(e,[this.larger(),s(gt("Along the beam"),()=>t.alongLight()),s(gt("Oblique"),()=>t.aslant()),s(gt("To the section"),()=>t.flyToMarker()),r(gt("cut open here"),!1,o=>t.setCut(o)),...t.partIds.slice(0,12).map(o=>r(this.atlas.words.part(o),!0,a=>t.setVisible(o,a)))]),t.partIds.length>12&&Po(e,[r(gt("{count} further parts",{count:t.partIds.length-12}),!0,o=>t.partIds.slice(12).forEach(a=>t.setVisible(a,o)))])}larger(){let t=fe("desk"),e=qt("button",{type:"button",id:"space-larger","aria-pressed":"false"},gt("Larger")),n=s=>{t.classList.toggle("large-space",s),e.setAttribute("aria-pressed",String(s)),e.textContent=s?gt("Smaller"):gt("Larger")};return e.addEventListener("click",()=>n(!t.classList.contains("large-space"))),fe("tab-plan")?.addEventListener("click",()=>n(!1)),e}show(t,e){this.scene?.show(t,e)}retheme(){this.scene?.retheme()}};function b1(i,t){let e=fe("all-values");if(!e)return;let{contour:n,joint:s,place:r,s:o}=t,a=Object.keys(i.payload.quantities).filter(l=>Array.isArray(n.stations[l])).map(l=>{let c=n.stations[l][r.station],u=c===null?i.words.reason(s.id,n.id,l,o):"";return qt("tr",null,qt("th",{scope:"row"},i.words.title(l)),qt("td",{"data-column":l,"data-value":String(c)},i.words.value(c,l)),qt("td",null,u))});en(e),e.append(...a)}function M1(i){let t=new Set(i.findingsHere().map(e=>String(e.n)));for(let e of document.querySelectorAll("#finding-list [data-row]"))t.has(e.dataset.row)?e.setAttribute("aria-current","true"):e.removeAttribute("aria-current")}function S1(i){return[...document.querySelectorAll("[data-sheet]")].flatMap((t,e)=>{let n=i.payload.findings.find(u=>String(u.n)===t.dataset.sheet);if(n.station===null)return[];let s=i.payload.joints.findIndex(u=>u.id===n.joint),r=i.payload.joints[s].contours.findIndex(u=>u.id===n.contour),o={joint:s,contour:r,station:n.station},a=(u,h)=>{en(t),t.append($d(i,o,u,h,`sheet${e}`,!0),qt("figcaption",null,qd(i,o)))},l=()=>a(Math.max(340,Math.min(760,t.getBoundingClientRect().width||660)),400),c=Io(t,l);return[{draw:c,forPrint:()=>{c(),a(450,330)},forScreen:l}]})}var C0=!1,P0=[];function I0(i){if(P0.push(i),C0)return;C0=!0;let t=document.documentElement,e=()=>{for(let n of P0)n()};fe("theme-switch")?.addEventListener("click",()=>{let n=t.dataset.theme?t.dataset.theme==="dark":matchMedia("(prefers-color-scheme: dark)").matches;t.dataset.theme=n?"light":"dark",e()}),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",e)}x1().catch(i=>{console.error(i);let t=fe("trouble");t&&(t.hidden=!1,t.textContent=gt("The figures could not be drawn: {error}. All texts and tables below are complete.",{error:i instanceof Error?i.message:String(i)}))});})();
